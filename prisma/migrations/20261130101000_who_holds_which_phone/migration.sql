-- A phone says whose it is.
ALTER TABLE "Device" ADD COLUMN "holderId" TEXT;
ALTER TABLE "Device" ADD COLUMN "heldSince" DATETIME CHECK (("holderId" IS NULL) = ("heldSince" IS NULL));
ALTER TABLE "Device" ADD COLUMN "holdNumber" INTEGER NOT NULL DEFAULT 0 CHECK ("holdNumber" >= 0);

-- A score names the scores of another phone under its name that it takes the place of. Scores from before this have
-- none: there the name alone was the writer, and every result that stands was counted so.
ALTER TABLE "ScoreFact" ADD COLUMN "replaces" TEXT CHECK ("replaces" IS NULL OR json_valid("replaces"));

-- Only somebody who is entered in the phone's own society holds it.
CREATE TRIGGER "Device_holder_is_entered" BEFORE UPDATE OF "holderId" ON "Device"
WHEN NEW."holderId" IS NOT NULL
  AND NOT EXISTS (SELECT 1 FROM "Entry" e WHERE e."id" = NEW."holderId" AND e."societyId" = NEW."societyId")
BEGIN SELECT RAISE(ABORT, 'whoever holds a phone is entered in its society'); END;
