-- A person entered by mistake may be deleted, and with the person the one handicap given at the start. The handicaps of
-- anybody who has a second one, was entered on a day, brought a guest or held a duty are history.
DROP TRIGGER "HandicapRecord_never_deleted";
CREATE TRIGGER "HandicapRecord_never_deleted" BEFORE DELETE ON "HandicapRecord"
WHEN OLD."dayId" IS NOT NULL
  OR (SELECT COUNT(*) FROM "HandicapRecord" WHERE "personId" = OLD."personId") > 1
  OR EXISTS (SELECT 1 FROM "Entry" WHERE "personId" = OLD."personId" OR "hostId" = OLD."personId")
  OR EXISTS (SELECT 1 FROM "DutyHeld" WHERE "personId" = OLD."personId")
BEGIN SELECT RAISE(ABORT, 'HandicapRecord is added, never deleted'); END;
