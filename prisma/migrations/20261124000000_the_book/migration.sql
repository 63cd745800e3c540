-- CreateTable
CREATE TABLE "Society" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "slug" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "foundedYear" INTEGER,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Society_check_1" CHECK ("slug" <> '' AND "slug" NOT GLOB '*[^a-z0-9-]*')
);

-- CreateTable
CREATE TABLE "Person" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "firstName" TEXT NOT NULL,
    "familyName" TEXT NOT NULL,
    "gender" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "regular" BOOLEAN NOT NULL DEFAULT true,
    "email" TEXT,
    "phone" TEXT,
    "handicapSource" TEXT NOT NULL,
    "memberSince" INTEGER,
    "leftOn" TEXT,
    "pageKey" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Person_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Person_check_1" CHECK ("gender" IN ('men','women')),
    CONSTRAINT "Person_check_2" CHECK ("kind" IN ('member','guest')),
    CONSTRAINT "Person_check_3" CHECK ("handicapSource" IN ('home-club','society','claimed'))
);

-- CreateTable
CREATE TABLE "DutyHeld" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "personId" TEXT,
    "duty" TEXT NOT NULL,
    "from" DATETIME NOT NULL,
    "until" DATETIME,
    CONSTRAINT "DutyHeld_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "DutyHeld_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "DutyHeld_societyId_personId_fkey" FOREIGN KEY ("societyId", "personId") REFERENCES "Person" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "DutyHeld_check_1" CHECK ("duty" IN ('secretary','handicap-secretary','treasurer','captain','committee')),
    CONSTRAINT "DutyHeld_check_2" CHECK ("until" IS NULL OR "until" >= "from")
);

-- CreateTable
CREATE TABLE "HandicapRecord" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "personId" TEXT NOT NULL,
    "source" TEXT NOT NULL,
    "indexTenths" INTEGER NOT NULL,
    "from" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "dayId" TEXT,
    "byUserId" TEXT,
    "recordedAt" DATETIME NOT NULL,
    "sequence" INTEGER NOT NULL,
    CONSTRAINT "HandicapRecord_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "HandicapRecord_societyId_personId_fkey" FOREIGN KEY ("societyId", "personId") REFERENCES "Person" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "HandicapRecord_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "HandicapRecord_check_1" CHECK ("source" IN ('home-club','society','claimed')),
    CONSTRAINT "HandicapRecord_check_2" CHECK ("indexTenths" BETWEEN -150 AND 540),
    CONSTRAINT "HandicapRecord_check_3" CHECK ("from" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    CONSTRAINT "HandicapRecord_check_4" CHECK ("sequence" >= 1)
);

-- CreateTable
CREATE TABLE "Course" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "place" TEXT,
    "holes" INTEGER NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "Course_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Course_check_1" CHECK ("holes" IN (9, 18))
);

-- CreateTable
CREATE TABLE "Tee" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "courseId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "gender" TEXT NOT NULL,
    "courseRatingTenths" INTEGER NOT NULL,
    "slopeRating" INTEGER NOT NULL,
    CONSTRAINT "Tee_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Tee_societyId_courseId_fkey" FOREIGN KEY ("societyId", "courseId") REFERENCES "Course" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Tee_check_1" CHECK ("gender" IN ('men','women')),
    CONSTRAINT "Tee_check_2" CHECK ("slopeRating" BETWEEN 55 AND 155),
    CONSTRAINT "Tee_check_3" CHECK ("courseRatingTenths" BETWEEN 200 AND 900)
);

-- CreateTable
CREATE TABLE "TeeHole" (
    "teeId" TEXT NOT NULL,
    "hole" INTEGER NOT NULL,
    "par" INTEGER NOT NULL,
    "strokeIndex" INTEGER NOT NULL,
    "yards" INTEGER,

    PRIMARY KEY ("teeId", "hole"),
    CONSTRAINT "TeeHole_teeId_fkey" FOREIGN KEY ("teeId") REFERENCES "Tee" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "TeeHole_check_1" CHECK ("hole" BETWEEN 1 AND 18),
    CONSTRAINT "TeeHole_check_2" CHECK ("par" BETWEEN 3 AND 6),
    CONSTRAINT "TeeHole_check_3" CHECK ("strokeIndex" BETWEEN 1 AND 18),
    CONSTRAINT "TeeHole_check_4" CHECK ("yards" IS NULL OR "yards" BETWEEN 30 AND 900)
);

-- CreateTable
CREATE TABLE "Season" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "startsOn" TEXT NOT NULL,
    "endsOn" TEXT NOT NULL,
    CONSTRAINT "Season_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Season_check_1" CHECK ("startsOn" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    CONSTRAINT "Season_check_2" CHECK ("endsOn" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    CONSTRAINT "Season_check_3" CHECK ("endsOn" >= "startsOn")
);

-- CreateTable
CREATE TABLE "Day" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "seasonId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "slug" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "date" TEXT NOT NULL,
    "status" TEXT NOT NULL,
    "edition" TEXT NOT NULL,
    "notes" TEXT,
    "entriesCloseOn" TEXT,
    "places" INTEGER,
    "frozenAt" DATETIME,
    "startPublishedAt" DATETIME,
    "closedAt" DATETIME,
    "version" INTEGER NOT NULL DEFAULT 1,
    "scoreVersion" INTEGER NOT NULL DEFAULT 0,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Day_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Day_societyId_seasonId_fkey" FOREIGN KEY ("societyId", "seasonId") REFERENCES "Season" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Day_check_1" CHECK ("status" IN ('called','frozen','in-play','closed')),
    CONSTRAINT "Day_check_2" CHECK ("date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    CONSTRAINT "Day_check_3" CHECK ("number" >= 1),
    CONSTRAINT "Day_check_4" CHECK (("frozenAt" IS NULL) = ("status" = 'called')),
    CONSTRAINT "Day_check_5" CHECK (("closedAt" IS NULL) = ("status" <> 'closed')),
    CONSTRAINT "Day_check_6" CHECK ("places" IS NULL OR "places" >= 1)
);

-- CreateTable
CREATE TABLE "Round" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "dayId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "courseId" TEXT NOT NULL,
    "courseName" TEXT NOT NULL,
    "holes" INTEGER NOT NULL,
    "startKind" TEXT NOT NULL,
    "firstTee" TEXT NOT NULL,
    "intervalMinutes" INTEGER NOT NULL,
    "drawnAt" DATETIME,
    "drawWay" TEXT,
    "drawSeed" INTEGER,
    CONSTRAINT "Round_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Round_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Round_societyId_courseId_fkey" FOREIGN KEY ("societyId", "courseId") REFERENCES "Course" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Round_check_1" CHECK ("holes" IN (9, 18)),
    CONSTRAINT "Round_check_2" CHECK ("startKind" IN ('tee-times','shotgun')),
    CONSTRAINT "Round_check_3" CHECK ("firstTee" GLOB '[0-2][0-9]:[0-5][0-9]'),
    CONSTRAINT "Round_check_4" CHECK ("intervalMinutes" BETWEEN 1 AND 60),
    CONSTRAINT "Round_check_5" CHECK ("number" >= 1),
    CONSTRAINT "Round_check_6" CHECK ("drawWay" IS NULL OR "drawWay" IN ('random','by-handicap-mixed','by-handicap-banded','entry-order','by-hand')),
    CONSTRAINT "Round_check_7" CHECK (("drawWay" IS NULL) = ("drawnAt" IS NULL))
);

-- CreateTable
CREATE TABLE "RoundTee" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "roundId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "gender" TEXT NOT NULL,
    "courseRatingTenths" INTEGER NOT NULL,
    "slopeRating" INTEGER NOT NULL,
    "isDefault" BOOLEAN NOT NULL,
    CONSTRAINT "RoundTee_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "RoundTee_societyId_roundId_fkey" FOREIGN KEY ("societyId", "roundId") REFERENCES "Round" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "RoundTee_check_1" CHECK ("gender" IN ('men','women')),
    CONSTRAINT "RoundTee_check_2" CHECK ("slopeRating" BETWEEN 55 AND 155),
    CONSTRAINT "RoundTee_check_3" CHECK ("courseRatingTenths" BETWEEN 200 AND 900)
);

-- CreateTable
CREATE TABLE "RoundTeeHole" (
    "roundTeeId" TEXT NOT NULL,
    "hole" INTEGER NOT NULL,
    "par" INTEGER NOT NULL,
    "strokeIndex" INTEGER NOT NULL,
    "yards" INTEGER,

    PRIMARY KEY ("roundTeeId", "hole"),
    CONSTRAINT "RoundTeeHole_roundTeeId_fkey" FOREIGN KEY ("roundTeeId") REFERENCES "RoundTee" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "RoundTeeHole_check_1" CHECK ("hole" BETWEEN 1 AND 18),
    CONSTRAINT "RoundTeeHole_check_2" CHECK ("par" BETWEEN 3 AND 6),
    CONSTRAINT "RoundTeeHole_check_3" CHECK ("strokeIndex" BETWEEN 1 AND 18),
    CONSTRAINT "RoundTeeHole_check_4" CHECK ("yards" IS NULL OR "yards" BETWEEN 30 AND 900)
);

-- CreateTable
CREATE TABLE "Competition" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "dayId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "format" TEXT NOT NULL,
    "terms" TEXT NOT NULL,
    CONSTRAINT "Competition_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Competition_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Competition_check_1" CHECK (json_valid("terms")),
    CONSTRAINT "Competition_check_2" CHECK ("number" >= 1)
);

-- CreateTable
CREATE TABLE "Prize" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "competitionId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "place" INTEGER NOT NULL,
    "eligible" TEXT NOT NULL,
    "valuePence" INTEGER,
    CONSTRAINT "Prize_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Prize_societyId_competitionId_fkey" FOREIGN KEY ("societyId", "competitionId") REFERENCES "Competition" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Prize_check_1" CHECK ("place" >= 1),
    CONSTRAINT "Prize_check_2" CHECK ("eligible" IN ('everybody','members','guests')),
    CONSTRAINT "Prize_check_3" CHECK ("valuePence" IS NULL OR "valuePence" >= 0)
);

-- CreateTable
CREATE TABLE "Entry" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "dayId" TEXT NOT NULL,
    "personId" TEXT NOT NULL,
    "hostId" TEXT,
    "kind" TEXT NOT NULL,
    "status" TEXT NOT NULL,
    "roundTeeId" TEXT NOT NULL,
    "claimedTenths" INTEGER,
    "indexTenths" INTEGER,
    "courseNumerator" INTEGER,
    "courseDenominator" INTEGER,
    "courseHandicap" INTEGER,
    "enteredAt" DATETIME NOT NULL,
    CONSTRAINT "Entry_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Entry_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Entry_societyId_personId_fkey" FOREIGN KEY ("societyId", "personId") REFERENCES "Person" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Entry_societyId_hostId_fkey" FOREIGN KEY ("societyId", "hostId") REFERENCES "Person" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Entry_societyId_roundTeeId_fkey" FOREIGN KEY ("societyId", "roundTeeId") REFERENCES "RoundTee" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Entry_check_1" CHECK ("kind" IN ('member','guest')),
    CONSTRAINT "Entry_check_2" CHECK ("status" IN ('entered','waiting','withdrawn')),
    CONSTRAINT "Entry_check_3" CHECK ("kind" = 'guest' OR "hostId" IS NULL),
    CONSTRAINT "Entry_check_4" CHECK ("claimedTenths" IS NULL OR "claimedTenths" BETWEEN -150 AND 540),
    CONSTRAINT "Entry_check_5" CHECK ("indexTenths" IS NULL OR "indexTenths" BETWEEN -150 AND 540),
    CONSTRAINT "Entry_check_6" CHECK (("indexTenths" IS NULL) = ("courseHandicap" IS NULL))
);

-- CreateTable
CREATE TABLE "PlayingHandicap" (
    "entryId" TEXT NOT NULL,
    "competitionId" TEXT NOT NULL,
    "playingHandicap" INTEGER NOT NULL,

    PRIMARY KEY ("entryId", "competitionId"),
    CONSTRAINT "PlayingHandicap_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "PlayingHandicap_competitionId_fkey" FOREIGN KEY ("competitionId") REFERENCES "Competition" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Side" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "competitionId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "name" TEXT,
    CONSTRAINT "Side_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Side_societyId_competitionId_fkey" FOREIGN KEY ("societyId", "competitionId") REFERENCES "Competition" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "SideMember" (
    "sideId" TEXT NOT NULL,
    "competitionId" TEXT NOT NULL,
    "entryId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,

    PRIMARY KEY ("sideId", "entryId"),
    CONSTRAINT "SideMember_sideId_fkey" FOREIGN KEY ("sideId") REFERENCES "Side" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "SideMember_competitionId_fkey" FOREIGN KEY ("competitionId") REFERENCES "Competition" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "SideMember_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "SideMember_check_1" CHECK ("position" >= 1)
);

-- CreateTable
CREATE TABLE "Group" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "roundId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "startTime" TEXT NOT NULL,
    "startHole" INTEGER NOT NULL,
    "linkKey" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "codeUntil" DATETIME NOT NULL,
    "revokedAt" DATETIME,
    CONSTRAINT "Group_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Group_societyId_roundId_fkey" FOREIGN KEY ("societyId", "roundId") REFERENCES "Round" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Group_check_1" CHECK ("startTime" GLOB '[0-2][0-9]:[0-5][0-9]'),
    CONSTRAINT "Group_check_2" CHECK ("startHole" BETWEEN 1 AND 18),
    CONSTRAINT "Group_check_3" CHECK ("number" >= 1)
);

-- CreateTable
CREATE TABLE "GroupPlace" (
    "groupId" TEXT NOT NULL,
    "entryId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,

    PRIMARY KEY ("groupId", "position"),
    CONSTRAINT "GroupPlace_groupId_fkey" FOREIGN KEY ("groupId") REFERENCES "Group" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "GroupPlace_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "GroupPlace_check_1" CHECK ("position" BETWEEN 1 AND 4)
);

-- CreateTable
CREATE TABLE "Card" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "roundId" TEXT NOT NULL,
    "entryId" TEXT NOT NULL,
    "markerId" TEXT,
    "state" TEXT NOT NULL,
    "takenInAt" DATETIME,
    "takenInBy" TEXT,
    CONSTRAINT "Card_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Card_societyId_roundId_fkey" FOREIGN KEY ("societyId", "roundId") REFERENCES "Round" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Card_societyId_entryId_fkey" FOREIGN KEY ("societyId", "entryId") REFERENCES "Entry" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Card_societyId_markerId_fkey" FOREIGN KEY ("societyId", "markerId") REFERENCES "Entry" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Card_check_1" CHECK ("state" IN ('out','handed-in','taken-in')),
    CONSTRAINT "Card_check_2" CHECK ("markerId" IS NULL OR "markerId" <> "entryId"),
    CONSTRAINT "Card_check_3" CHECK (("takenInAt" IS NULL) = ("state" <> 'taken-in'))
);

-- CreateTable
CREATE TABLE "Device" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "groupId" TEXT,
    "lastSeq" INTEGER NOT NULL DEFAULT 0,
    "firstSeen" DATETIME NOT NULL,
    "lastSeen" DATETIME NOT NULL,
    CONSTRAINT "Device_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Device_societyId_groupId_fkey" FOREIGN KEY ("societyId", "groupId") REFERENCES "Group" ("societyId", "id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Device_check_1" CHECK ("lastSeq" >= 0)
);

-- CreateTable
CREATE TABLE "ScoreFact" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "societyId" TEXT NOT NULL,
    "cardId" TEXT NOT NULL,
    "hole" INTEGER NOT NULL,
    "strokes" INTEGER,
    "outcome" TEXT NOT NULL,
    "writer" TEXT NOT NULL,
    "writerId" TEXT,
    "userId" TEXT,
    "deviceId" TEXT NOT NULL,
    "seq" INTEGER NOT NULL,
    "writtenAt" DATETIME NOT NULL,
    "receivedAt" DATETIME NOT NULL,
    "late" BOOLEAN NOT NULL DEFAULT false,
    CONSTRAINT "ScoreFact_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ScoreFact_societyId_cardId_fkey" FOREIGN KEY ("societyId", "cardId") REFERENCES "Card" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ScoreFact_societyId_writerId_fkey" FOREIGN KEY ("societyId", "writerId") REFERENCES "Entry" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ScoreFact_societyId_deviceId_fkey" FOREIGN KEY ("societyId", "deviceId") REFERENCES "Device" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ScoreFact_check_1" CHECK ("hole" BETWEEN 1 AND 18),
    CONSTRAINT "ScoreFact_check_2" CHECK ("outcome" IN ('holed','no-score','cleared')),
    CONSTRAINT "ScoreFact_check_3" CHECK (("outcome" = 'holed') = ("strokes" IS NOT NULL)),
    CONSTRAINT "ScoreFact_check_4" CHECK ("strokes" IS NULL OR "strokes" BETWEEN 1 AND 30),
    CONSTRAINT "ScoreFact_check_5" CHECK ("writer" IN ('entry','desk')),
    CONSTRAINT "ScoreFact_check_6" CHECK (("writer" = 'entry') = ("writerId" IS NOT NULL)),
    CONSTRAINT "ScoreFact_check_7" CHECK ("seq" >= 1)
);

-- CreateTable
CREATE TABLE "Signature" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "cardId" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "entryId" TEXT,
    "scores" TEXT NOT NULL,
    "deviceId" TEXT NOT NULL,
    "seq" INTEGER NOT NULL,
    "signedAt" DATETIME NOT NULL,
    "receivedAt" DATETIME NOT NULL,
    "withdrawnAt" DATETIME,
    CONSTRAINT "Signature_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Signature_societyId_cardId_fkey" FOREIGN KEY ("societyId", "cardId") REFERENCES "Card" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Signature_societyId_entryId_fkey" FOREIGN KEY ("societyId", "entryId") REFERENCES "Entry" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Signature_check_1" CHECK ("role" IN ('player','marker')),
    CONSTRAINT "Signature_check_2" CHECK (json_valid("scores")),
    CONSTRAINT "Signature_check_3" CHECK ("seq" >= 1)
);

-- CreateTable
CREATE TABLE "RefusedFact" (
    "deviceId" TEXT NOT NULL,
    "seq" INTEGER NOT NULL,
    "societyId" TEXT NOT NULL,
    "fact" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "sentence" TEXT NOT NULL,
    "refusedAt" DATETIME NOT NULL,

    PRIMARY KEY ("deviceId", "seq"),
    CONSTRAINT "RefusedFact_societyId_deviceId_fkey" FOREIGN KEY ("societyId", "deviceId") REFERENCES "Device" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "RefusedFact_check_1" CHECK (json_valid("fact"))
);

-- CreateTable
CREATE TABLE "Ruling" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "dayId" TEXT NOT NULL,
    "cardId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "hole" INTEGER,
    "value" INTEGER,
    "clause" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "byUserId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "ruledAt" DATETIME NOT NULL,
    "replaces" INTEGER,
    CONSTRAINT "Ruling_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Ruling_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Ruling_societyId_cardId_fkey" FOREIGN KEY ("societyId", "cardId") REFERENCES "Card" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Ruling_check_1" CHECK ("kind" IN ('hole-score','penalty-strokes','penalty-points','no-return','disqualified','withdrawn','card-stands','playing-handicap','withdrawn-ruling')),
    CONSTRAINT "Ruling_check_2" CHECK ("reason" <> ''),
    CONSTRAINT "Ruling_check_3" CHECK ("hole" IS NULL OR "hole" BETWEEN 1 AND 18),
    CONSTRAINT "Ruling_check_4" CHECK ("kind" NOT IN ('hole-score','penalty-strokes') OR "hole" IS NOT NULL)
);

-- CreateTable
CREATE TABLE "Reopening" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "dayId" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "byUserId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "reopenedAt" DATETIME NOT NULL,
    CONSTRAINT "Reopening_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Reopening_check_1" CHECK ("reason" <> '')
);

-- CreateTable
CREATE TABLE "Publication" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "societyId" TEXT NOT NULL,
    "dayId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "sheet" TEXT NOT NULL,
    "reason" TEXT,
    "edition" TEXT NOT NULL,
    "scoreVersion" INTEGER NOT NULL,
    "byUserId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "publishedAt" DATETIME NOT NULL,
    CONSTRAINT "Publication_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Publication_societyId_dayId_fkey" FOREIGN KEY ("societyId", "dayId") REFERENCES "Day" ("societyId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Publication_check_1" CHECK ("number" >= 1),
    CONSTRAINT "Publication_check_2" CHECK (json_valid("sheet")),
    CONSTRAINT "Publication_check_3" CHECK ("number" = 1 OR ("reason" IS NOT NULL AND "reason" <> ''))
);

-- CreateTable
CREATE TABLE "StandingsSnapshot" (
    "dayId" TEXT NOT NULL PRIMARY KEY,
    "scoreVersion" INTEGER NOT NULL,
    "dayVersion" INTEGER NOT NULL,
    "board" TEXT NOT NULL,
    "countedAt" DATETIME NOT NULL,
    CONSTRAINT "StandingsSnapshot_dayId_fkey" FOREIGN KEY ("dayId") REFERENCES "Day" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "StandingsSnapshot_check_1" CHECK (json_valid("board"))
);

-- CreateTable
CREATE TABLE "User" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Session" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "token" TEXT NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "userId" TEXT NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Session_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Account" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" DATETIME,
    "refreshTokenExpiresAt" DATETIME,
    "scope" TEXT,
    "password" TEXT,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Account_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Verification" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "RateLimit" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "key" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "lastRequest" BIGINT NOT NULL
);

-- CreateIndex
CREATE UNIQUE INDEX "Society_slug_key" ON "Society"("slug");

-- CreateIndex
CREATE UNIQUE INDEX "Person_pageKey_key" ON "Person"("pageKey");

-- CreateIndex
CREATE INDEX "Person_societyId_familyName_idx" ON "Person"("societyId", "familyName");

-- CreateIndex
CREATE UNIQUE INDEX "Person_societyId_id_key" ON "Person"("societyId", "id");

-- CreateIndex
CREATE INDEX "DutyHeld_userId_idx" ON "DutyHeld"("userId");

-- CreateIndex
CREATE UNIQUE INDEX "DutyHeld_societyId_userId_duty_from_key" ON "DutyHeld"("societyId", "userId", "duty", "from");

-- CreateIndex
CREATE INDEX "HandicapRecord_societyId_personId_idx" ON "HandicapRecord"("societyId", "personId");

-- CreateIndex
CREATE UNIQUE INDEX "HandicapRecord_personId_sequence_key" ON "HandicapRecord"("personId", "sequence");

-- CreateIndex
CREATE UNIQUE INDEX "Course_societyId_id_key" ON "Course"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Course_societyId_name_key" ON "Course"("societyId", "name");

-- CreateIndex
CREATE UNIQUE INDEX "Tee_courseId_name_gender_key" ON "Tee"("courseId", "name", "gender");

-- CreateIndex
CREATE UNIQUE INDEX "Tee_societyId_id_key" ON "Tee"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "TeeHole_teeId_strokeIndex_key" ON "TeeHole"("teeId", "strokeIndex");

-- CreateIndex
CREATE UNIQUE INDEX "Season_societyId_id_key" ON "Season"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Season_societyId_name_key" ON "Season"("societyId", "name");

-- CreateIndex
CREATE UNIQUE INDEX "Day_societyId_id_key" ON "Day"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Day_societyId_slug_key" ON "Day"("societyId", "slug");

-- CreateIndex
CREATE UNIQUE INDEX "Day_seasonId_number_key" ON "Day"("seasonId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "Round_societyId_id_key" ON "Round"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Round_dayId_number_key" ON "Round"("dayId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "RoundTee_roundId_name_gender_key" ON "RoundTee"("roundId", "name", "gender");

-- CreateIndex
CREATE UNIQUE INDEX "RoundTee_societyId_id_key" ON "RoundTee"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "RoundTeeHole_roundTeeId_strokeIndex_key" ON "RoundTeeHole"("roundTeeId", "strokeIndex");

-- CreateIndex
CREATE UNIQUE INDEX "Competition_societyId_id_key" ON "Competition"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Competition_dayId_number_key" ON "Competition"("dayId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "Prize_competitionId_number_key" ON "Prize"("competitionId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "Entry_societyId_id_key" ON "Entry"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Entry_dayId_personId_key" ON "Entry"("dayId", "personId");

-- CreateIndex
CREATE UNIQUE INDEX "Side_competitionId_number_key" ON "Side"("competitionId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "SideMember_competitionId_entryId_key" ON "SideMember"("competitionId", "entryId");

-- CreateIndex
CREATE UNIQUE INDEX "SideMember_sideId_position_key" ON "SideMember"("sideId", "position");

-- CreateIndex
CREATE UNIQUE INDEX "Group_linkKey_key" ON "Group"("linkKey");

-- CreateIndex
CREATE UNIQUE INDEX "Group_code_key" ON "Group"("code");

-- CreateIndex
CREATE UNIQUE INDEX "Group_societyId_id_key" ON "Group"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Group_roundId_number_key" ON "Group"("roundId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "GroupPlace_entryId_key" ON "GroupPlace"("entryId");

-- CreateIndex
CREATE UNIQUE INDEX "Card_societyId_id_key" ON "Card"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Card_roundId_entryId_key" ON "Card"("roundId", "entryId");

-- CreateIndex
CREATE UNIQUE INDEX "Device_societyId_id_key" ON "Device"("societyId", "id");

-- CreateIndex
CREATE INDEX "ScoreFact_cardId_id_idx" ON "ScoreFact"("cardId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "ScoreFact_deviceId_seq_key" ON "ScoreFact"("deviceId", "seq");

-- CreateIndex
CREATE INDEX "Signature_cardId_idx" ON "Signature"("cardId");

-- CreateIndex
CREATE UNIQUE INDEX "Signature_deviceId_seq_key" ON "Signature"("deviceId", "seq");

-- CreateIndex
CREATE INDEX "Ruling_cardId_idx" ON "Ruling"("cardId");

-- CreateIndex
CREATE UNIQUE INDEX "Ruling_dayId_number_key" ON "Ruling"("dayId", "number");

-- CreateIndex
CREATE INDEX "Reopening_dayId_idx" ON "Reopening"("dayId");

-- CreateIndex
CREATE UNIQUE INDEX "Publication_dayId_number_key" ON "Publication"("dayId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "Publication_societyId_id_key" ON "Publication"("societyId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "User_email_key" ON "User"("email");

-- CreateIndex
CREATE UNIQUE INDEX "Session_token_key" ON "Session"("token");

-- CreateIndex
CREATE INDEX "Session_userId_idx" ON "Session"("userId");

-- CreateIndex
CREATE INDEX "Account_userId_idx" ON "Account"("userId");

-- CreateIndex
CREATE INDEX "Verification_identifier_idx" ON "Verification"("identifier");

-- CreateIndex
CREATE UNIQUE INDEX "RateLimit_key_key" ON "RateLimit"("key");

-- Facts, rulings, publications and handicap records are added, never edited. A score fact may only be marked late when
-- it is written; a signature may only be withdrawn.
CREATE TRIGGER "ScoreFact_never_edited" BEFORE UPDATE ON "ScoreFact" BEGIN SELECT RAISE(ABORT, 'ScoreFact is added, never edited'); END;
CREATE TRIGGER "ScoreFact_never_deleted" BEFORE DELETE ON "ScoreFact" BEGIN SELECT RAISE(ABORT, 'ScoreFact is added, never deleted'); END;
CREATE TRIGGER "RefusedFact_never_edited" BEFORE UPDATE ON "RefusedFact" BEGIN SELECT RAISE(ABORT, 'RefusedFact is added, never edited'); END;
CREATE TRIGGER "RefusedFact_never_deleted" BEFORE DELETE ON "RefusedFact" BEGIN SELECT RAISE(ABORT, 'RefusedFact is added, never deleted'); END;
CREATE TRIGGER "Ruling_never_edited" BEFORE UPDATE ON "Ruling" BEGIN SELECT RAISE(ABORT, 'Ruling is added, never edited'); END;
CREATE TRIGGER "Ruling_never_deleted" BEFORE DELETE ON "Ruling" BEGIN SELECT RAISE(ABORT, 'Ruling is added, never deleted'); END;
CREATE TRIGGER "Reopening_never_edited" BEFORE UPDATE ON "Reopening" BEGIN SELECT RAISE(ABORT, 'Reopening is added, never edited'); END;
CREATE TRIGGER "Reopening_never_deleted" BEFORE DELETE ON "Reopening" BEGIN SELECT RAISE(ABORT, 'Reopening is added, never deleted'); END;
CREATE TRIGGER "Publication_never_edited" BEFORE UPDATE ON "Publication" BEGIN SELECT RAISE(ABORT, 'Publication is added, never edited'); END;
CREATE TRIGGER "Publication_never_deleted" BEFORE DELETE ON "Publication" BEGIN SELECT RAISE(ABORT, 'Publication is added, never deleted'); END;
CREATE TRIGGER "HandicapRecord_never_edited" BEFORE UPDATE ON "HandicapRecord" BEGIN SELECT RAISE(ABORT, 'HandicapRecord is added, never edited'); END;
CREATE TRIGGER "HandicapRecord_never_deleted" BEFORE DELETE ON "HandicapRecord" BEGIN SELECT RAISE(ABORT, 'HandicapRecord is added, never deleted'); END;
CREATE TRIGGER "Signature_only_withdrawn" BEFORE UPDATE ON "Signature"
WHEN OLD."cardId" <> NEW."cardId" OR OLD."role" <> NEW."role" OR OLD."scores" <> NEW."scores" OR OLD."signedAt" <> NEW."signedAt" OR OLD."withdrawnAt" IS NOT NULL
BEGIN SELECT RAISE(ABORT, 'a signature can only be withdrawn'); END;
CREATE TRIGGER "Signature_never_deleted" BEFORE DELETE ON "Signature" BEGIN SELECT RAISE(ABORT, 'Signature is added, never deleted'); END;

-- A player and the marker play in the same day; an entry's tee belongs to the same day; a side's entry to the same day.
CREATE TRIGGER "Entry_tee_of_the_day" BEFORE INSERT ON "Entry"
WHEN (SELECT r."dayId" FROM "RoundTee" t JOIN "Round" r ON r."id" = t."roundId" WHERE t."id" = NEW."roundTeeId") <> NEW."dayId"
BEGIN SELECT RAISE(ABORT, 'the tee belongs to another day'); END;
CREATE TRIGGER "SideMember_same_day" BEFORE INSERT ON "SideMember"
WHEN (SELECT "dayId" FROM "Entry" WHERE "id" = NEW."entryId") <> (SELECT "dayId" FROM "Competition" WHERE "id" = NEW."competitionId")
BEGIN SELECT RAISE(ABORT, 'the entry belongs to another day'); END;
CREATE TRIGGER "GroupPlace_same_day" BEFORE INSERT ON "GroupPlace"
WHEN (SELECT "dayId" FROM "Entry" WHERE "id" = NEW."entryId") <> (SELECT r."dayId" FROM "Group" g JOIN "Round" r ON r."id" = g."roundId" WHERE g."id" = NEW."groupId")
BEGIN SELECT RAISE(ABORT, 'the entry belongs to another day'); END;
CREATE TRIGGER "SideMember_side_of_competition" BEFORE INSERT ON "SideMember"
WHEN (SELECT "competitionId" FROM "Side" WHERE "id" = NEW."sideId") <> NEW."competitionId"
BEGIN SELECT RAISE(ABORT, 'the side belongs to another competition'); END;
CREATE TRIGGER "PlayingHandicap_same_day" BEFORE INSERT ON "PlayingHandicap"
WHEN (SELECT "dayId" FROM "Entry" WHERE "id" = NEW."entryId") <> (SELECT "dayId" FROM "Competition" WHERE "id" = NEW."competitionId")
BEGIN SELECT RAISE(ABORT, 'the entry belongs to another day'); END;
CREATE TRIGGER "Entry_tee_moved_within_the_day" BEFORE UPDATE OF "roundTeeId" ON "Entry"
WHEN (SELECT r."dayId" FROM "RoundTee" t JOIN "Round" r ON r."id" = t."roundId" WHERE t."id" = NEW."roundTeeId") <> NEW."dayId"
BEGIN SELECT RAISE(ABORT, 'the tee belongs to another day'); END;
CREATE TRIGGER "Card_same_day" BEFORE INSERT ON "Card"
WHEN (SELECT "dayId" FROM "Entry" WHERE "id" = NEW."entryId") <> (SELECT "dayId" FROM "Round" WHERE "id" = NEW."roundId")
BEGIN SELECT RAISE(ABORT, 'the entry belongs to another day'); END;
CREATE TRIGGER "Card_marker_same_day" BEFORE INSERT ON "Card"
WHEN NEW."markerId" IS NOT NULL AND (SELECT "dayId" FROM "Entry" WHERE "id" = NEW."markerId") <> (SELECT "dayId" FROM "Round" WHERE "id" = NEW."roundId")
BEGIN SELECT RAISE(ABORT, 'the marker plays on another day'); END;
CREATE TRIGGER "Card_marker_moved_within_the_day" BEFORE UPDATE OF "markerId" ON "Card"
WHEN NEW."markerId" IS NOT NULL AND (SELECT "dayId" FROM "Entry" WHERE "id" = NEW."markerId") <> (SELECT "dayId" FROM "Round" WHERE "id" = NEW."roundId")
BEGIN SELECT RAISE(ABORT, 'the marker plays on another day'); END;
CREATE TRIGGER "Ruling_card_of_the_day" BEFORE INSERT ON "Ruling"
WHEN (SELECT r."dayId" FROM "Card" c JOIN "Round" r ON r."id" = c."roundId" WHERE c."id" = NEW."cardId") <> NEW."dayId"
BEGIN SELECT RAISE(ABORT, 'the card belongs to another day'); END;

-- What is frozen into a day stays as it was: the figure of an entry, the tees, and the terms of a competition.
CREATE TRIGGER "Entry_figure_frozen" BEFORE UPDATE OF "indexTenths", "courseNumerator", "courseDenominator", "courseHandicap" ON "Entry"
WHEN OLD."indexTenths" IS NOT NULL AND (NEW."indexTenths" IS NOT OLD."indexTenths" OR NEW."courseNumerator" IS NOT OLD."courseNumerator" OR NEW."courseDenominator" IS NOT OLD."courseDenominator" OR NEW."courseHandicap" IS NOT OLD."courseHandicap")
BEGIN SELECT RAISE(ABORT, 'the figure is frozen into the day'); END;
CREATE TRIGGER "PlayingHandicap_frozen" BEFORE UPDATE ON "PlayingHandicap"
BEGIN SELECT RAISE(ABORT, 'the playing handicap is frozen into the day'); END;
CREATE TRIGGER "RoundTee_frozen" BEFORE UPDATE ON "RoundTee"
WHEN (SELECT d."status" FROM "Round" r JOIN "Day" d ON d."id" = r."dayId" WHERE r."id" = OLD."roundId") <> 'called'
BEGIN SELECT RAISE(ABORT, 'the tees are frozen into the day'); END;
CREATE TRIGGER "RoundTeeHole_frozen" BEFORE UPDATE ON "RoundTeeHole"
WHEN (SELECT d."status" FROM "RoundTee" t JOIN "Round" r ON r."id" = t."roundId" JOIN "Day" d ON d."id" = r."dayId" WHERE t."id" = OLD."roundTeeId") <> 'called'
BEGIN SELECT RAISE(ABORT, 'the tees are frozen into the day'); END;
CREATE TRIGGER "Competition_frozen" BEFORE UPDATE OF "format", "terms" ON "Competition"
WHEN (NEW."format" IS NOT OLD."format" OR NEW."terms" IS NOT OLD."terms") AND (SELECT "status" FROM "Day" WHERE "id" = OLD."dayId") <> 'called'
BEGIN SELECT RAISE(ABORT, 'the terms are frozen into the day'); END;
