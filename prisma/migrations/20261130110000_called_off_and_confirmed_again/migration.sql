-- A day that was called off stays in the fixture list with its reason; a day played before its date says that an officer
-- meant it so.
ALTER TABLE "Day" ADD COLUMN "calledOffAt" DATETIME
  CONSTRAINT "Day_called_off_is_not_closed" CHECK ("calledOffAt" IS NULL OR "status" <> 'closed');
ALTER TABLE "Day" ADD COLUMN "calledOffReason" TEXT
  CONSTRAINT "Day_called_off_has_its_reason" CHECK (("calledOffReason" IS NULL) = ("calledOffAt" IS NULL) AND ("calledOffReason" IS NULL OR length(trim("calledOffReason")) >= 3));
ALTER TABLE "Day" ADD COLUMN "playedAheadAt" DATETIME;

-- A day that was called off takes nothing from then on, and no result of it is ever published. What came before stays
-- and can be read in again with the book.
CREATE TRIGGER "ScoreFact_day_not_called_off" BEFORE INSERT ON "ScoreFact"
WHEN (SELECT d."calledOffAt" FROM "Card" c JOIN "Round" r ON r."id" = c."roundId" JOIN "Day" d ON d."id" = r."dayId" WHERE c."id" = NEW."cardId") < NEW."receivedAt"
BEGIN SELECT RAISE(ABORT, 'the day was called off'); END;
CREATE TRIGGER "Signature_day_not_called_off" BEFORE INSERT ON "Signature"
WHEN (SELECT d."calledOffAt" FROM "Card" c JOIN "Round" r ON r."id" = c."roundId" JOIN "Day" d ON d."id" = r."dayId" WHERE c."id" = NEW."cardId") < NEW."receivedAt"
BEGIN SELECT RAISE(ABORT, 'the day was called off'); END;
CREATE TRIGGER "BallFact_day_not_called_off" BEFORE INSERT ON "BallFact"
WHEN (SELECT "calledOffAt" FROM "Day" WHERE "id" = NEW."dayId") < NEW."receivedAt"
BEGIN SELECT RAISE(ABORT, 'the day was called off'); END;
CREATE TRIGGER "Ruling_day_not_called_off" BEFORE INSERT ON "Ruling"
WHEN (SELECT "calledOffAt" FROM "Day" WHERE "id" = NEW."dayId") < NEW."ruledAt"
BEGIN SELECT RAISE(ABORT, 'the day was called off'); END;
CREATE TRIGGER "Publication_day_not_called_off" BEFORE INSERT ON "Publication"
WHEN (SELECT "calledOffAt" FROM "Day" WHERE "id" = NEW."dayId") IS NOT NULL
BEGIN SELECT RAISE(ABORT, 'the day was called off'); END;
CREATE TRIGGER "Day_published_is_not_called_off" BEFORE UPDATE OF "calledOffAt" ON "Day"
WHEN NEW."calledOffAt" IS NOT NULL AND EXISTS (SELECT 1 FROM "Publication" WHERE "dayId" = NEW."id")
BEGIN SELECT RAISE(ABORT, 'the result of the day is published'); END;

-- What is frozen into a day may be taken out again as a whole while the start sheet is not out, so that it can be frozen
-- anew; it never turns into another figure in place, and nothing moves once the sheet is out.
DROP TRIGGER "Entry_figure_frozen";
CREATE TRIGGER "Entry_figure_frozen" BEFORE UPDATE OF "indexTenths", "courseNumerator", "courseDenominator", "courseHandicap" ON "Entry"
WHEN OLD."indexTenths" IS NOT NULL AND (NEW."indexTenths" IS NOT OLD."indexTenths" OR NEW."courseNumerator" IS NOT OLD."courseNumerator" OR NEW."courseDenominator" IS NOT OLD."courseDenominator" OR NEW."courseHandicap" IS NOT OLD."courseHandicap")
  AND NOT (NEW."indexTenths" IS NULL AND NEW."courseNumerator" IS NULL AND NEW."courseDenominator" IS NULL AND NEW."courseHandicap" IS NULL
    AND (SELECT "startPublishedAt" FROM "Day" WHERE "id" = OLD."dayId") IS NULL)
BEGIN SELECT RAISE(ABORT, 'the figure is frozen into the day'); END;
DROP TRIGGER "Entry_labels_frozen";
CREATE TRIGGER "Entry_labels_frozen" BEFORE UPDATE OF "labels" ON "Entry"
WHEN OLD."labels" IS NOT NULL AND NEW."labels" IS NOT OLD."labels"
  AND NOT (NEW."labels" IS NULL AND (SELECT "startPublishedAt" FROM "Day" WHERE "id" = OLD."dayId") IS NULL)
BEGIN SELECT RAISE(ABORT, 'the words are frozen into the day'); END;
