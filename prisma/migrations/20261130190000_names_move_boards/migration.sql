-- How somebody is shown stands on every board and on every reading made from one. Whatever changes it, from whichever
-- use case, moves the version of each day the person is entered on or hosts a guest on: a board counted before is then
-- of an older version, is counted again when it is next asked for, and whoever watches the day is told.
CREATE TRIGGER "Person_shown_otherwise" AFTER UPDATE OF "firstName", "familyName", "knownAs", "junior", "shownAs" ON "Person"
WHEN OLD."firstName" IS NOT NEW."firstName" OR OLD."familyName" IS NOT NEW."familyName"
  OR OLD."knownAs" IS NOT NEW."knownAs" OR OLD."junior" IS NOT NEW."junior" OR OLD."shownAs" IS NOT NEW."shownAs"
BEGIN
  UPDATE "Day" SET "scoreVersion" = "scoreVersion" + 1
  WHERE "id" IN (SELECT "dayId" FROM "Entry" WHERE "personId" = NEW."id" OR "hostId" = NEW."id");
END;

-- The society's own rule for juniors and leavers.
CREATE TRIGGER "Society_shows_otherwise" AFTER UPDATE OF "settings" ON "Society"
WHEN OLD."settings" IS NOT NEW."settings"
BEGIN UPDATE "Day" SET "scoreVersion" = "scoreVersion" + 1 WHERE "societyId" = NEW."id"; END;

-- Boards kept until now were counted without this.
DELETE FROM "StandingsSnapshot";
