-- Holes and matches conceded on a phone, as they were sent: Rules of Golf 3.2b. What stands is the ending of the pairing,
-- which the desk writes too; these rows say who wrote what, and answer a delivery that comes twice.
CREATE TABLE "Concession" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "societyId" TEXT NOT NULL,
    "dayId" TEXT NOT NULL,
    "pairingId" TEXT NOT NULL,
    "hole" INTEGER,
    "by" TEXT,
    "writerId" TEXT NOT NULL,
    "deviceId" TEXT NOT NULL,
    "seq" INTEGER NOT NULL,
    "writtenAt" DATETIME NOT NULL,
    "receivedAt" DATETIME NOT NULL,
    "late" BOOLEAN NOT NULL DEFAULT false,
    CONSTRAINT "Concession_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Concession_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Concession_societyId_writerId_fkey" FOREIGN KEY ("societyId", "writerId") REFERENCES "Entry" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Concession_societyId_deviceId_fkey" FOREIGN KEY ("societyId", "deviceId") REFERENCES "Device" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Concession_hole" CHECK ("hole" IS NULL OR "hole" BETWEEN 1 AND 18),
    CONSTRAINT "Concession_by" CHECK ("by" IS NULL OR "by" IN ('a', 'b')),
    CONSTRAINT "Concession_seq" CHECK ("seq" >= 1)
);

CREATE INDEX "Concession_dayId_id_idx" ON "Concession"("dayId", "id");
CREATE UNIQUE INDEX "Concession_deviceId_seq_key" ON "Concession"("deviceId", "seq");

-- Added, never edited.
CREATE TRIGGER "Concession_never_edited" BEFORE UPDATE ON "Concession" BEGIN SELECT RAISE(ABORT, 'Concession is added, never edited'); END;
CREATE TRIGGER "Concession_never_deleted" BEFORE DELETE ON "Concession" BEGIN SELECT RAISE(ABORT, 'Concession is added, never deleted'); END;
CREATE TRIGGER "Concession_day_not_called_off" BEFORE INSERT ON "Concession"
WHEN (SELECT "calledOffAt" FROM "Day" WHERE "id" = NEW."dayId") < NEW."receivedAt"
BEGIN SELECT RAISE(ABORT, 'the day was called off'); END;
