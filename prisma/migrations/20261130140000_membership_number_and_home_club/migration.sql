-- Two columns that most membership spreadsheets have and the book had no place for.
ALTER TABLE "Person" ADD COLUMN "membershipNumber" TEXT CHECK ("membershipNumber" IS NULL OR length("membershipNumber") BETWEEN 1 AND 30);
ALTER TABLE "Person" ADD COLUMN "homeClub" TEXT CHECK ("homeClub" IS NULL OR length("homeClub") BETWEEN 1 AND 80);
