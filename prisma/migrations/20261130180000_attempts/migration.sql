-- Tries are counted in a table of their own: the sign-in library empties its own table of everything older than a minute.
-- What was tried is a digest of fixed length, so that nothing a visitor types is stored. What is there was counted in
-- the other table under the same names; it is forgotten with this step, which at most gives a quarter of an hour's tries again.
CREATE TABLE "Attempt" (
  "digest" TEXT NOT NULL PRIMARY KEY CHECK (length("digest") = 43),
  "count" INTEGER NOT NULL CHECK ("count" > 0),
  -- Milliseconds since 1970: the beginning of the window, and its end.
  "began" BIGINT NOT NULL,
  "until" BIGINT NOT NULL CHECK ("until" > "began")
);
CREATE INDEX "Attempt_until_idx" ON "Attempt"("until");
DELETE FROM "RateLimit";
