-- AlterTable
ALTER TABLE "Prize" ADD COLUMN "division" TEXT;

-- AlterTable
ALTER TABLE "Entry" ADD COLUMN "labels" TEXT CHECK ("labels" IS NULL OR json_valid("labels"));

-- AlterTable
ALTER TABLE "Side" ADD COLUMN "ballLostOn" INTEGER CHECK ("ballLostOn" IS NULL OR "ballLostOn" BETWEEN 1 AND 18);

-- CreateTable
CREATE TABLE "Pairing" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "competitionId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "entryAId" TEXT,
    "entryBId" TEXT,
    "sideAId" TEXT,
    "sideBId" TEXT,
    "ending" TEXT NOT NULL DEFAULT '{}',
    CONSTRAINT "Pairing_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Pairing_societyId_competitionId_fkey" FOREIGN KEY ("societyId", "competitionId") REFERENCES "Competition" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Pairing_societyId_entryAId_fkey" FOREIGN KEY ("societyId", "entryAId") REFERENCES "Entry" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Pairing_societyId_entryBId_fkey" FOREIGN KEY ("societyId", "entryBId") REFERENCES "Entry" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Pairing_societyId_sideAId_fkey" FOREIGN KEY ("societyId", "sideAId") REFERENCES "Side" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Pairing_societyId_sideBId_fkey" FOREIGN KEY ("societyId", "sideBId") REFERENCES "Side" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Pairing_two_entries_or_two_sides" CHECK (("entryAId" IS NOT NULL AND "sideAId" IS NULL AND "sideBId" IS NULL) OR ("sideAId" IS NOT NULL AND "entryAId" IS NULL AND "entryBId" IS NULL)),
    CONSTRAINT "Pairing_nobody_plays_himself" CHECK ("entryAId" IS NOT "entryBId" OR "sideAId" IS NOT "sideBId"),
    CONSTRAINT "Pairing_ending_is_json" CHECK (json_valid("ending"))
);

-- CreateTable
CREATE TABLE "Team" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "dayId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    CONSTRAINT "Team_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Team_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Team_number_from_one" CHECK ("number" >= 1)
);

-- CreateTable
CREATE TABLE "TeamMember" (
    "societyId" TEXT NOT NULL,
    "teamId" TEXT NOT NULL,
    "entryId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,

    PRIMARY KEY ("teamId", "entryId"),
    CONSTRAINT "TeamMember_societyId_teamId_fkey" FOREIGN KEY ("societyId", "teamId") REFERENCES "Team" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "TeamMember_societyId_entryId_fkey" FOREIGN KEY ("societyId", "entryId") REFERENCES "Entry" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "BallFact" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "societyId" TEXT NOT NULL,
    "dayId" TEXT NOT NULL,
    "sideId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "hole" INTEGER NOT NULL,
    "entryId" TEXT,
    "lost" BOOLEAN NOT NULL DEFAULT false,
    "writer" TEXT NOT NULL,
    "writerId" TEXT,
    "userId" TEXT,
    "deviceId" TEXT NOT NULL,
    "seq" INTEGER NOT NULL,
    "writtenAt" DATETIME NOT NULL,
    "receivedAt" DATETIME NOT NULL,
    "late" BOOLEAN NOT NULL DEFAULT false,
    CONSTRAINT "BallFact_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "BallFact_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "BallFact_societyId_entryId_fkey" FOREIGN KEY ("societyId", "entryId") REFERENCES "Entry" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "BallFact_societyId_deviceId_fkey" FOREIGN KEY ("societyId", "deviceId") REFERENCES "Device" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "BallFact_kind" CHECK ("kind" IN ('drive', 'ball-lost')),
    CONSTRAINT "BallFact_writer" CHECK ("writer" IN ('entry', 'desk')),
    CONSTRAINT "BallFact_hole" CHECK ("hole" BETWEEN 1 AND 18),
    CONSTRAINT "BallFact_seq" CHECK ("seq" >= 1)
);

-- CreateTable
CREATE TABLE "CountedDay" (
    "societyId" TEXT NOT NULL,
    "competitionId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "dayId" TEXT NOT NULL,

    PRIMARY KEY ("competitionId", "number"),
    CONSTRAINT "CountedDay_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "CountedDay_societyId_competitionId_fkey" FOREIGN KEY ("societyId", "competitionId") REFERENCES "Competition" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "CountedDay_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "CountedDay_number_from_one" CHECK ("number" >= 1)
);

-- CreateTable
CREATE TABLE "PlayStop" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "societyId" TEXT NOT NULL,
    "dayId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "byUserId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "toldAt" DATETIME NOT NULL,
    CONSTRAINT "PlayStop_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PlayStop_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PlayStop_kind" CHECK ("kind" IN ('stop-at-once', 'stop-after-hole', 'resume'))
);

-- CreateTable
CREATE TABLE "ActRecord" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "societyId" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "act" TEXT NOT NULL,
    "actorKind" TEXT NOT NULL,
    "userId" TEXT,
    "actorName" TEXT NOT NULL,
    "from" TEXT,
    "area" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "subjectId" TEXT,
    "before" TEXT,
    "after" TEXT,
    CONSTRAINT "ActRecord_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ActRecord_actorKind" CHECK ("actorKind" IN ('officer', 'scorer', 'member', 'anybody', 'server')),
    CONSTRAINT "ActRecord_area" CHECK ("area" IN ('handicaps', 'money', 'results', 'entries', 'access', 'day', 'book')),
    CONSTRAINT "ActRecord_before_is_json" CHECK ("before" IS NULL OR json_valid("before")),
    CONSTRAINT "ActRecord_after_is_json" CHECK ("after" IS NULL OR json_valid("after"))
);

-- CreateTable
CREATE TABLE "Passkey" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT,
    "publicKey" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "credentialID" TEXT NOT NULL,
    "counter" INTEGER NOT NULL,
    "deviceType" TEXT NOT NULL,
    "backedUp" BOOLEAN NOT NULL,
    "transports" TEXT,
    "createdAt" DATETIME,
    "aaguid" TEXT,
    CONSTRAINT "Passkey_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- Columns are added in place: no table is rebuilt, so the checks and triggers of the first migration stay as they are.
-- AlterTable
ALTER TABLE "Society" ADD COLUMN "settings" TEXT NOT NULL DEFAULT '{}' CHECK (json_valid("settings"));

-- AlterTable
ALTER TABLE "Person" ADD COLUMN "junior" BOOLEAN NOT NULL DEFAULT false;
ALTER TABLE "Person" ADD COLUMN "labels" TEXT NOT NULL DEFAULT '[]' CHECK (json_valid("labels"));
ALTER TABLE "Person" ADD COLUMN "shownAs" TEXT NOT NULL DEFAULT 'name' CHECK ("shownAs" IN ('name', 'initials', 'former-member'));
ALTER TABLE "Person" ADD COLUMN "erasedAt" DATETIME;

-- AlterTable
ALTER TABLE "Day" ADD COLUMN "showsPosition" BOOLEAN NOT NULL DEFAULT false;
ALTER TABLE "Day" ADD COLUMN "showsChances" BOOLEAN NOT NULL DEFAULT false;

-- AlterTable
ALTER TABLE "Device" ADD COLUMN "unsent" INTEGER NOT NULL DEFAULT 0 CHECK ("unsent" >= 0);
ALTER TABLE "Device" ADD COLUMN "appVersion" TEXT;

-- CreateIndex
CREATE UNIQUE INDEX "Pairing_competitionId_number_key" ON "Pairing"("competitionId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "Pairing_societyId_id_key" ON "Pairing"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Team_dayId_number_key" ON "Team"("dayId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "Team_societyId_id_key" ON "Team"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "TeamMember_entryId_key" ON "TeamMember"("entryId");

-- CreateIndex
CREATE INDEX "BallFact_dayId_id_idx" ON "BallFact"("dayId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "BallFact_deviceId_seq_key" ON "BallFact"("deviceId", "seq");

-- CreateIndex
CREATE UNIQUE INDEX "CountedDay_competitionId_dayId_key" ON "CountedDay"("competitionId", "dayId");

-- CreateIndex
CREATE INDEX "PlayStop_dayId_id_idx" ON "PlayStop"("dayId", "id");

-- CreateIndex
CREATE INDEX "ActRecord_societyId_id_idx" ON "ActRecord"("societyId", "id");

-- CreateIndex
CREATE INDEX "ActRecord_societyId_area_id_idx" ON "ActRecord"("societyId", "area", "id");

-- CreateIndex
CREATE INDEX "Passkey_userId_idx" ON "Passkey"("userId");

-- CreateIndex
CREATE INDEX "Passkey_credentialID_idx" ON "Passkey"("credentialID");

-- CreateIndex
CREATE UNIQUE INDEX "Side_societyId_id_key" ON "Side"("societyId", "id");

-- Added, never edited.
CREATE TRIGGER "BallFact_never_edited" BEFORE UPDATE ON "BallFact" BEGIN SELECT RAISE(ABORT, 'BallFact is added, never edited'); END;
CREATE TRIGGER "BallFact_never_deleted" BEFORE DELETE ON "BallFact" BEGIN SELECT RAISE(ABORT, 'BallFact is added, never deleted'); END;
CREATE TRIGGER "PlayStop_never_edited" BEFORE UPDATE ON "PlayStop" BEGIN SELECT RAISE(ABORT, 'PlayStop is added, never edited'); END;
CREATE TRIGGER "PlayStop_never_deleted" BEFORE DELETE ON "PlayStop" BEGIN SELECT RAISE(ABORT, 'PlayStop is added, never deleted'); END;
CREATE TRIGGER "ActRecord_never_edited" BEFORE UPDATE ON "ActRecord" BEGIN SELECT RAISE(ABORT, 'ActRecord is added, never edited'); END;
CREATE TRIGGER "ActRecord_never_deleted" BEFORE DELETE ON "ActRecord" BEGIN SELECT RAISE(ABORT, 'ActRecord is added, never deleted'); END;

-- What is paired, teamed or written down belongs to the day it stands in.
CREATE TRIGGER "Pairing_entries_of_the_day" BEFORE INSERT ON "Pairing"
WHEN EXISTS (SELECT 1 FROM "Entry" e WHERE e."id" IN (NEW."entryAId", NEW."entryBId") AND e."dayId" <> (SELECT "dayId" FROM "Competition" WHERE "id" = NEW."competitionId"))
BEGIN SELECT RAISE(ABORT, 'the entry belongs to another day'); END;
CREATE TRIGGER "Pairing_sides_of_the_competition" BEFORE INSERT ON "Pairing"
WHEN EXISTS (SELECT 1 FROM "Side" s WHERE s."id" IN (NEW."sideAId", NEW."sideBId") AND s."competitionId" <> NEW."competitionId")
BEGIN SELECT RAISE(ABORT, 'the side belongs to another competition'); END;
CREATE TRIGGER "Pairing_stays_paired" BEFORE UPDATE OF "competitionId", "entryAId", "entryBId", "sideAId", "sideBId" ON "Pairing"
BEGIN SELECT RAISE(ABORT, 'a pairing is made anew, not edited'); END;
CREATE TRIGGER "TeamMember_same_day" BEFORE INSERT ON "TeamMember"
WHEN (SELECT "dayId" FROM "Entry" WHERE "id" = NEW."entryId") <> (SELECT "dayId" FROM "Team" WHERE "id" = NEW."teamId")
BEGIN SELECT RAISE(ABORT, 'the entry belongs to another day'); END;
CREATE TRIGGER "BallFact_entry_of_the_day" BEFORE INSERT ON "BallFact"
WHEN NEW."entryId" IS NOT NULL AND (SELECT "dayId" FROM "Entry" WHERE "id" = NEW."entryId") <> NEW."dayId"
BEGIN SELECT RAISE(ABORT, 'the entry belongs to another day'); END;
CREATE TRIGGER "BallFact_side_of_the_day" BEFORE INSERT ON "BallFact"
WHEN NOT EXISTS (SELECT 1 FROM "Side" s JOIN "Competition" c ON c."id" = s."competitionId" WHERE s."id" = NEW."sideId" AND c."dayId" = NEW."dayId")
BEGIN SELECT RAISE(ABORT, 'the side belongs to another day'); END;
CREATE TRIGGER "CountedDay_other_day" BEFORE INSERT ON "CountedDay"
WHEN NEW."dayId" = (SELECT "dayId" FROM "Competition" WHERE "id" = NEW."competitionId")
BEGIN SELECT RAISE(ABORT, 'a day is not added to itself'); END;
CREATE TRIGGER "Entry_labels_frozen" BEFORE UPDATE OF "labels" ON "Entry"
WHEN OLD."labels" IS NOT NULL AND NEW."labels" IS NOT OLD."labels"
BEGIN SELECT RAISE(ABORT, 'the words are frozen into the day'); END;
