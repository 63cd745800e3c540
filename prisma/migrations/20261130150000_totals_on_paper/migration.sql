-- What the paper adds up to, as it was read from it: kept with the card, also where the holes come to something else.
ALTER TABLE "Card" ADD COLUMN "paperOut" INTEGER CHECK ("paperOut" IS NULL OR "paperOut" BETWEEN 0 AND 999);
ALTER TABLE "Card" ADD COLUMN "paperIn" INTEGER CHECK ("paperIn" IS NULL OR "paperIn" BETWEEN 0 AND 999);
ALTER TABLE "Card" ADD COLUMN "paperTotal" INTEGER CHECK ("paperTotal" IS NULL OR "paperTotal" BETWEEN 0 AND 999);
