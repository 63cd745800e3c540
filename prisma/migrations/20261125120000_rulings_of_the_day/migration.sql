-- CreateTable
CREATE TABLE "DayRuling" (
    "societyId" TEXT NOT NULL,
    "dayId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "ruling" TEXT NOT NULL,

    PRIMARY KEY ("dayId", "number"),
    CONSTRAINT "DayRuling_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "DayRuling_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "DayRuling_number_from_one" CHECK ("number" >= 1),
    CONSTRAINT "DayRuling_kind" CHECK ("kind" IN ('play-off', 'abandoned', 'taken-back')),
    CONSTRAINT "DayRuling_ruling_is_json" CHECK (json_valid("ruling"))
);

-- Added, never edited.
CREATE TRIGGER "DayRuling_never_edited" BEFORE UPDATE ON "DayRuling" BEGIN SELECT RAISE(ABORT, 'DayRuling is added, never edited'); END;
CREATE TRIGGER "DayRuling_never_deleted" BEFORE DELETE ON "DayRuling" BEGIN SELECT RAISE(ABORT, 'DayRuling is added, never deleted'); END;
