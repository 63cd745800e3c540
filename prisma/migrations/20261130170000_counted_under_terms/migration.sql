-- How an earlier day counts in a sum of days: as it was published, or counted anew under the terms of the day that adds up.
ALTER TABLE "CountedDay" ADD COLUMN "countedUnder" TEXT NOT NULL DEFAULT 'as-published' CHECK ("countedUnder" IN ('as-published', 'this-day'));
