-- What the value of a ruling on a handicap is: the index in tenths, or the course handicap. Empty: the playing handicap of
-- every competition alike, as days were ruled before.
ALTER TABLE "Ruling" ADD COLUMN "sets" TEXT CONSTRAINT "Ruling_sets_a_handicap" CHECK ("sets" IS NULL OR ("kind" = 'playing-handicap' AND "value" IS NOT NULL AND "sets" IN ('index', 'course')));
