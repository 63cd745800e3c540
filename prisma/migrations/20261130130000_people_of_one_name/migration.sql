-- A word that tells two people of one name apart: "senior", "Tom's son". It stands after the name on every list.
ALTER TABLE "Person" ADD COLUMN "knownAs" TEXT
  CHECK ("knownAs" IS NULL OR ("knownAs" = trim("knownAs") AND length("knownAs") BETWEEN 1 AND 30));
