-- Practice designs in full, plans of practices, what is tapped at the pitch, pairs, first partners, guests and helpers.

CREATE TYPE "PairKind" AS ENUM ('apart', 'together');

ALTER TABLE "PracticeDesign"
    ADD COLUMN "areaUnit" TEXT NOT NULL DEFAULT 'm',
    ADD COLUMN "isMirrored" BOOLEAN NOT NULL DEFAULT false,
    ADD COLUMN "hasHeading" BOOLEAN NOT NULL DEFAULT false,
    ADD COLUMN "sides" JSONB,
    ADD COLUMN "adaptations" JSONB NOT NULL DEFAULT '[]',
    ADD COLUMN "copiedFromId" UUID,
    ADD COLUMN "archivedAt" TIMESTAMPTZ(3);

ALTER TABLE "Player"
    ADD COLUMN "guestSince" DATE,
    ADD COLUMN "joinedToId" UUID;

-- With whom a player has the first turn of each practice, once a coach has said whom; until then nobody is named.
ALTER TABLE "Adjustment" ADD COLUMN "partnerId" UUID;

ALTER TABLE "TurnEvent" ADD COLUMN "continuesTurn" BOOLEAN NOT NULL DEFAULT false;

CREATE TABLE "PlayerPair" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "squadId" UUID NOT NULL,
    "oneId" UUID NOT NULL,
    "otherId" UUID NOT NULL,
    "kind" "PairKind" NOT NULL,
    "firstDay" DATE NOT NULL,
    "lastDay" DATE,
    "madeById" UUID,

    CONSTRAINT "PlayerPair_pkey" PRIMARY KEY ("clubId","id")
);

CREATE TABLE "SessionPlan" (
    "clubId" UUID NOT NULL,
    "sessionId" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "plan" JSONB NOT NULL,
    "madeById" UUID,
    "madeAt" TIMESTAMPTZ(3) NOT NULL,
    "forgottenAt" TIMESTAMPTZ(3),

    CONSTRAINT "SessionPlan_pkey" PRIMARY KEY ("clubId","sessionId")
);

CREATE TABLE "PitchEvent" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "sessionId" UUID NOT NULL,
    "deviceId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "seq" INTEGER NOT NULL,
    "deed" JSONB NOT NULL,
    "recordedById" UUID,
    "helperPassId" UUID,
    "receivedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "PitchEvent_pkey" PRIMARY KEY ("clubId","id")
);

CREATE TABLE "HelperPass" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "sessionId" UUID NOT NULL,
    "secretHash" TEXT NOT NULL,
    "expiresAt" TIMESTAMPTZ(3) NOT NULL,
    "madeById" UUID,
    "madeAt" TIMESTAMPTZ(3) NOT NULL,
    "revokedAt" TIMESTAMPTZ(3),

    CONSTRAINT "HelperPass_pkey" PRIMARY KEY ("clubId","id")
);

CREATE INDEX "PlayerPair_clubId_squadId_idx" ON "PlayerPair"("clubId", "squadId");
CREATE UNIQUE INDEX "PitchEvent_clubId_sessionId_seq_key" ON "PitchEvent"("clubId", "sessionId", "seq");
CREATE INDEX "HelperPass_clubId_sessionId_idx" ON "HelperPass"("clubId", "sessionId");
CREATE INDEX "AuditEntry_clubId_objectId_idx" ON "AuditEntry"("clubId", "objectId");

ALTER TABLE "PracticeDesign" ADD CONSTRAINT "PracticeDesign_clubId_copiedFromId_fkey" FOREIGN KEY ("clubId", "copiedFromId") REFERENCES "PracticeDesign"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "Player" ADD CONSTRAINT "Player_clubId_joinedToId_fkey" FOREIGN KEY ("clubId", "joinedToId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "Adjustment" ADD CONSTRAINT "Adjustment_clubId_partnerId_fkey" FOREIGN KEY ("clubId", "partnerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "PlayerPair" ADD CONSTRAINT "PlayerPair_clubId_squadId_fkey" FOREIGN KEY ("clubId", "squadId") REFERENCES "Squad"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "PlayerPair" ADD CONSTRAINT "PlayerPair_clubId_oneId_fkey" FOREIGN KEY ("clubId", "oneId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "PlayerPair" ADD CONSTRAINT "PlayerPair_clubId_otherId_fkey" FOREIGN KEY ("clubId", "otherId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "PlayerPair" ADD CONSTRAINT "PlayerPair_clubId_madeById_fkey" FOREIGN KEY ("clubId", "madeById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "SessionPlan" ADD CONSTRAINT "SessionPlan_clubId_sessionId_fkey" FOREIGN KEY ("clubId", "sessionId") REFERENCES "Session"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "SessionPlan" ADD CONSTRAINT "SessionPlan_clubId_madeById_fkey" FOREIGN KEY ("clubId", "madeById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "PitchEvent" ADD CONSTRAINT "PitchEvent_clubId_sessionId_fkey" FOREIGN KEY ("clubId", "sessionId") REFERENCES "Session"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "PitchEvent" ADD CONSTRAINT "PitchEvent_clubId_recordedById_fkey" FOREIGN KEY ("clubId", "recordedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "PitchEvent" ADD CONSTRAINT "PitchEvent_clubId_helperPassId_fkey" FOREIGN KEY ("clubId", "helperPassId") REFERENCES "HelperPass"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "HelperPass" ADD CONSTRAINT "HelperPass_clubId_sessionId_fkey" FOREIGN KEY ("clubId", "sessionId") REFERENCES "Session"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "HelperPass" ADD CONSTRAINT "HelperPass_clubId_madeById_fkey" FOREIGN KEY ("clubId", "madeById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;


-- Written by hand from here on.

ALTER TABLE "PracticeDesign"
  ADD CONSTRAINT "PracticeDesign_areaUnit_check" CHECK ("areaUnit" IN ('m', 'yd')),
  ADD CONSTRAINT "PracticeDesign_sides_check" CHECK (sides IS NULL OR jsonb_typeof(sides) = 'object'),
  ADD CONSTRAINT "PracticeDesign_adaptations_check" CHECK (jsonb_typeof(adaptations) = 'array'),
  ADD CONSTRAINT "PracticeDesign_copy_check" CHECK ("copiedFromId" <> id);
ALTER TABLE "Player"
  ADD CONSTRAINT "Player_joined_check" CHECK ("joinedToId" IS NULL OR ("guestSince" IS NOT NULL AND "joinedToId" <> id));
ALTER TABLE "Adjustment"
  ADD CONSTRAINT "Adjustment_partner_check" CHECK (
    "partnerId" IS NULL OR (kind = 'sameFirstPartner' AND "partnerId" <> "playerId"));
ALTER TABLE "TurnEvent"
  ADD CONSTRAINT "TurnEvent_continues_check" CHECK (kind = 'turn' OR NOT "continuesTurn");
ALTER TABLE "PlayerPair"
  ADD CONSTRAINT "PlayerPair_two_check" CHECK ("oneId" <> "otherId"),
  ADD CONSTRAINT "PlayerPair_days_check" CHECK ("lastDay" >= "firstDay");
ALTER TABLE "SessionPlan"
  ADD CONSTRAINT "SessionPlan_version_check" CHECK (version >= 1),
  ADD CONSTRAINT "SessionPlan_plan_check" CHECK (jsonb_typeof(plan) = 'object' AND octet_length(plan::text) <= 1048576);
ALTER TABLE "PitchEvent"
  ADD CONSTRAINT "PitchEvent_seq_check" CHECK (seq >= 1),
  ADD CONSTRAINT "PitchEvent_deed_check" CHECK (jsonb_typeof(deed) = 'object' AND octet_length(deed::text) <= 262144);
ALTER TABLE "HelperPass"
  ADD CONSTRAINT "HelperPass_hash_check" CHECK ("secretHash" ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT "HelperPass_time_check" CHECK ("expiresAt" > "madeAt");

CREATE TRIGGER stays_written BEFORE UPDATE OR DELETE OR TRUNCATE ON "PitchEvent"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

SELECT guard_by_club(name::regclass) FROM unnest(ARRAY['"PlayerPair"', '"SessionPlan"', '"PitchEvent"', '"HelperPass"']) AS name;

-- Gives the app's role what it needs, table by table, and takes away whatever else it had. Called below when the role
-- is there already, and by whoever makes the role later.
CREATE OR REPLACE FUNCTION grant_app_rights(app_role name) RETURNS void LANGUAGE plpgsql AS $$
DECLARE
  owned regclass;
  item record;
BEGIN
  FOR owned IN
    SELECT c.oid FROM pg_class c
    WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND pg_has_role(c.relowner, 'usage')
  LOOP
    EXECUTE format('REVOKE ALL ON %s FROM %I', owned, app_role);
  END LOOP;
  EXECUTE format('GRANT USAGE ON SCHEMA public TO %I', app_role);
  EXECUTE format('GRANT EXECUTE ON FUNCTION list_demo_people() TO %I', app_role);

  FOR item IN SELECT * FROM (VALUES
    ('Club', 'SELECT'),
    ('Person', 'SELECT, INSERT, UPDATE (name, role)'),
    ('Season', 'SELECT, INSERT, UPDATE (name, "firstDay", "lastDay")'),
    ('Term', 'SELECT, INSERT, UPDATE (name, "firstDay", "lastDay")'),
    ('Squad', 'SELECT, INSERT, UPDATE (name, "ageLimit")'),
    ('SquadCoach', 'SELECT, INSERT, UPDATE ("lastDay")'),
    ('Player', 'SELECT, INSERT, UPDATE (name, keeps, "wantsToKeep", "joinedToId")'),
    ('KeepsChange', 'SELECT, INSERT'),
    ('Guardianship', 'SELECT, INSERT, DELETE'),
    ('SquadMembership', 'SELECT, INSERT, UPDATE ("firstDay", "lastDay")'),
    ('Adjustment', 'SELECT, INSERT, UPDATE ("lastDay", "partnerId")'),
    ('Theme', 'SELECT, INSERT, UPDATE (name, "parentId", "order", asks)'),
    ('ProgrammeEntry', 'SELECT, INSERT, UPDATE ("wishedShare"), DELETE'),
    ('PracticeDesign', 'SELECT, INSERT, UPDATE (name, "themeId", "areaLengthM", "areaWidthM", "areaUnit",
      "isMirrored", "hasHeading", rounds, sides, adaptations, note, "archivedAt")'),
    ('Session', 'SELECT, INSERT, UPDATE (day, title, "startsAt", "lengthSeconds", periods, "designId", written,
      "writtenById", "writtenAt", "ledById", "cancelledAt")'),
    ('RegisterLine', 'SELECT, INSERT, UPDATE ("voidedAt", "voidedById")'),
    ('TurnEvent', 'SELECT, INSERT'),
    ('TurnSeat', 'SELECT, INSERT'),
    ('MatchSpell', 'SELECT, INSERT, UPDATE ("voidedAt", "voidedById")'),
    ('SessionTotal', 'SELECT, INSERT, DELETE'),
    ('Exposure', 'SELECT, INSERT, DELETE'),
    ('SessionPresence', 'SELECT, INSERT, DELETE'),
    ('PolicyVersion', 'SELECT, INSERT'),
    ('FlagState', 'SELECT, INSERT, UPDATE (status, since, "isClosing", "gapSeconds", "toleranceSeconds", size, "sinceSessionId",
      detail, "acknowledgedById", "acknowledgedAt", "acknowledgedReason", "acknowledgedSize", "clearedAt")'),
    ('PlayerPair', 'SELECT, INSERT, UPDATE ("lastDay")'),
    ('SessionPlan', 'SELECT, INSERT, UPDATE (version, plan, "madeById", "madeAt", "forgottenAt")'),
    ('PitchEvent', 'SELECT, INSERT'),
    ('HelperPass', 'SELECT, INSERT, UPDATE ("revokedAt")'),
    ('TermReview', 'SELECT, INSERT, UPDATE (answer, "answeredById", "answeredAt")'),
    ('AuditEntry', 'SELECT, INSERT')
  ) AS rights (of_table, allowed) LOOP
    EXECUTE format('GRANT %s ON %I TO %I', item.allowed, item.of_table, app_role);
  END LOOP;
END $$;

DO $$
BEGIN
  IF EXISTS (SELECT FROM pg_roles WHERE rolname = 'turnbook_app') THEN
    PERFORM grant_app_rights('turnbook_app');
  END IF;
END $$;
