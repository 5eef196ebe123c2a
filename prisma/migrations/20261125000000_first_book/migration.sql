-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "public";

-- CreateEnum
CREATE TYPE "SessionKind" AS ENUM ('practice', 'match');

-- CreateEnum
CREATE TYPE "Written" AS ENUM ('tapped', 'roundByRound', 'asPlanned', 'typedLater', 'notWritten');

-- CreateEnum
CREATE TYPE "RegisterState" AS ENUM ('here', 'notPlaying', 'out');

-- CreateEnum
CREATE TYPE "TurnEventKind" AS ENUM ('turn', 'passed', 'void');

-- CreateEnum
CREATE TYPE "SeatRole" AS ENUM ('attack', 'defend', 'keep');

-- CreateEnum
CREATE TYPE "Side" AS ENUM ('attack', 'defend');

-- CreateEnum
CREATE TYPE "SpellLine" AS ENUM ('keeper', 'back', 'middle', 'forward');

-- CreateEnum
CREATE TYPE "Role" AS ENUM ('attack', 'defend', 'keep', 'rest');

-- CreateEnum
CREATE TYPE "ColumnSituation" AS ENUM ('none', 'outnumbering', 'level', 'outnumbered');

-- CreateEnum
CREATE TYPE "ColumnLine" AS ENUM ('none', 'back', 'middle', 'forward');

-- CreateEnum
CREATE TYPE "Attendance" AS ENUM ('here', 'late', 'left', 'notPlaying', 'out', 'away');

-- CreateEnum
CREATE TYPE "PersonRole" AS ENUM ('administrator', 'headCoach', 'coach', 'helper', 'guardian');

-- CreateEnum
CREATE TYPE "SquadCoachKind" AS ENUM ('coach', 'cover');

-- CreateEnum
CREATE TYPE "AdjustmentKind" AS ENUM ('sameSide', 'sameFirstPartner', 'planShownEarly', 'neverWaitsAlone', 'fewerTurns');

-- CreateEnum
CREATE TYPE "FlagStatus" AS ENUM ('open', 'acknowledged', 'cleared');

-- CreateTable
CREATE TABLE "Club" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "timeZone" TEXT NOT NULL,
    "locale" TEXT NOT NULL DEFAULT 'en-GB',
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "calendarDay" DATE,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Club_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Person" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "role" "PersonRole" NOT NULL,

    CONSTRAINT "Person_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "Season" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "firstDay" DATE NOT NULL,
    "lastDay" DATE NOT NULL,

    CONSTRAINT "Season_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "Term" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seasonId" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "firstDay" DATE NOT NULL,
    "lastDay" DATE NOT NULL,

    CONSTRAINT "Term_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "Squad" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "ageLimit" INTEGER NOT NULL,

    CONSTRAINT "Squad_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "SquadCoach" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "squadId" UUID NOT NULL,
    "personId" UUID NOT NULL,
    "kind" "SquadCoachKind" NOT NULL,
    "firstDay" DATE NOT NULL,
    "lastDay" DATE,

    CONSTRAINT "SquadCoach_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "Player" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "keeps" BOOLEAN NOT NULL DEFAULT true,
    "wantsToKeep" BOOLEAN NOT NULL DEFAULT false,
    "code" TEXT,

    CONSTRAINT "Player_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "Guardianship" (
    "clubId" UUID NOT NULL,
    "personId" UUID NOT NULL,
    "playerId" UUID NOT NULL,

    CONSTRAINT "Guardianship_pkey" PRIMARY KEY ("clubId","personId","playerId")
);

-- CreateTable
CREATE TABLE "SquadMembership" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "squadId" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "firstDay" DATE NOT NULL,
    "lastDay" DATE,

    CONSTRAINT "SquadMembership_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "Adjustment" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "kind" "AdjustmentKind" NOT NULL,
    "dueShare" DOUBLE PRECISION,
    "firstDay" DATE NOT NULL,
    "lastDay" DATE,

    CONSTRAINT "Adjustment_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "Theme" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "parentId" UUID,
    "order" INTEGER NOT NULL,
    "asks" TEXT NOT NULL DEFAULT '',
    "code" TEXT,

    CONSTRAINT "Theme_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "ProgrammeEntry" (
    "clubId" UUID NOT NULL,
    "squadId" UUID NOT NULL,
    "termId" UUID NOT NULL,
    "themeId" UUID NOT NULL,
    "wishedShare" DOUBLE PRECISION NOT NULL,

    CONSTRAINT "ProgrammeEntry_pkey" PRIMARY KEY ("clubId","squadId","termId","themeId")
);

-- CreateTable
CREATE TABLE "PracticeDesign" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "themeId" UUID,
    "areaLengthM" DOUBLE PRECISION NOT NULL,
    "areaWidthM" DOUBLE PRECISION NOT NULL,
    "rounds" JSONB NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "PracticeDesign_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "Session" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "squadId" UUID NOT NULL,
    "kind" "SessionKind" NOT NULL,
    "day" DATE NOT NULL,
    "title" TEXT NOT NULL DEFAULT '',
    "startsAt" TEXT,
    "lengthSeconds" INTEGER,
    "periods" JSONB,
    "designId" UUID,
    "written" "Written" NOT NULL DEFAULT 'notWritten',
    "writtenById" UUID,
    "writtenAt" TIMESTAMPTZ(3),
    "ledById" UUID,
    "cancelledAt" TIMESTAMPTZ(3),
    "code" TEXT,

    CONSTRAINT "Session_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "RegisterLine" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "sessionId" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "state" "RegisterState" NOT NULL,
    "fromSecond" INTEGER NOT NULL,
    "toSecond" INTEGER NOT NULL,
    "recordedById" UUID,
    "recordedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "voidedById" UUID,
    "voidedAt" TIMESTAMPTZ(3),

    CONSTRAINT "RegisterLine_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "TurnEvent" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "sessionId" UUID NOT NULL,
    "seq" INTEGER NOT NULL,
    "kind" "TurnEventKind" NOT NULL,
    "startSecond" INTEGER,
    "endSecond" INTEGER,
    "round" TEXT,
    "themeId" UUID,
    "stationCount" INTEGER,
    "continuesWait" BOOLEAN NOT NULL DEFAULT false,
    "chosenBy" "Side",
    "playerId" UUID,
    "role" "SeatRole",
    "lengthSeconds" INTEGER,
    "voidsId" UUID,
    "recordedById" UUID,
    "recordedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "TurnEvent_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "TurnSeat" (
    "clubId" UUID NOT NULL,
    "turnEventId" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "station" INTEGER NOT NULL,
    "role" "SeatRole" NOT NULL,
    "place" INTEGER NOT NULL,

    CONSTRAINT "TurnSeat_pkey" PRIMARY KEY ("clubId","turnEventId","playerId")
);

-- CreateTable
CREATE TABLE "MatchSpell" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "sessionId" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "line" "SpellLine" NOT NULL,
    "startSecond" INTEGER NOT NULL,
    "endSecond" INTEGER NOT NULL,
    "recordedById" UUID,
    "recordedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "voidedById" UUID,
    "voidedAt" TIMESTAMPTZ(3),

    CONSTRAINT "MatchSpell_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "SessionTotal" (
    "clubId" UUID NOT NULL,
    "sessionId" UUID NOT NULL,
    "liveSeconds" INTEGER NOT NULL,
    "rebuiltAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "SessionTotal_pkey" PRIMARY KEY ("clubId","sessionId")
);

-- CreateTable
CREATE TABLE "Exposure" (
    "clubId" UUID NOT NULL,
    "sessionId" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "role" "Role" NOT NULL,
    "situation" "ColumnSituation" NOT NULL,
    "line" "ColumnLine" NOT NULL,
    "themeId" UUID NOT NULL,
    "isMember" BOOLEAN NOT NULL,
    "seconds" DOUBLE PRECISION NOT NULL,
    "turns" INTEGER NOT NULL,
    "fairSeconds" DOUBLE PRECISION NOT NULL,
    "fairTurns" DOUBLE PRECISION NOT NULL,
    "fullFairSeconds" DOUBLE PRECISION NOT NULL,
    "membersFairSeconds" DOUBLE PRECISION NOT NULL,
    "openGoalFairSeconds" DOUBLE PRECISION NOT NULL,

    CONSTRAINT "Exposure_pkey" PRIMARY KEY ("clubId","sessionId","playerId","role","situation","line","themeId")
);

-- CreateTable
CREATE TABLE "SessionPresence" (
    "clubId" UUID NOT NULL,
    "sessionId" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "isMember" BOOLEAN NOT NULL,
    "attendance" "Attendance" NOT NULL,
    "liveSeconds" INTEGER NOT NULL,
    "turnsPresent" INTEGER NOT NULL,
    "longestRestTurns" INTEGER NOT NULL,

    CONSTRAINT "SessionPresence_pkey" PRIMARY KEY ("clubId","sessionId","playerId")
);

-- CreateTable
CREATE TABLE "PolicyVersion" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "ageLimit" INTEGER,
    "effectiveFrom" DATE NOT NULL,
    "toleranceSeconds" INTEGER NOT NULL,
    "toleranceShare" DOUBLE PRECISION NOT NULL,
    "middleAttackShare" DOUBLE PRECISION NOT NULL,
    "restLimitTurns" INTEGER NOT NULL,
    "goalShareLimit" DOUBLE PRECISION NOT NULL,
    "leastMatchShare" DOUBLE PRECISION NOT NULL,
    "writtenShareNeeded" DOUBLE PRECISION NOT NULL,
    "sessionsBeforeFlags" INTEGER NOT NULL,
    "matchesBeforeRoles" INTEGER NOT NULL,
    "madeById" UUID,
    "madeAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "PolicyVersion_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "FlagState" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "squadId" UUID NOT NULL,
    "seasonId" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "rule" TEXT NOT NULL,
    "scope" "SessionKind" NOT NULL,
    "subject" TEXT NOT NULL DEFAULT '',
    "status" "FlagStatus" NOT NULL,
    "since" DATE NOT NULL,
    "sinceSessionId" UUID NOT NULL,
    "isClosing" BOOLEAN NOT NULL,
    "gapSeconds" DOUBLE PRECISION NOT NULL,
    "toleranceSeconds" DOUBLE PRECISION NOT NULL,
    "size" DOUBLE PRECISION NOT NULL,
    "detail" JSONB NOT NULL,
    "acknowledgedById" UUID,
    "acknowledgedAt" TIMESTAMPTZ(3),
    "acknowledgedReason" TEXT,
    "acknowledgedSize" DOUBLE PRECISION,
    "clearedAt" TIMESTAMPTZ(3),

    CONSTRAINT "FlagState_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateTable
CREATE TABLE "TermReview" (
    "clubId" UUID NOT NULL,
    "squadId" UUID NOT NULL,
    "termId" UUID NOT NULL,
    "openedOn" DATE NOT NULL,
    "openedById" UUID NOT NULL,
    "answer" TEXT NOT NULL DEFAULT '',
    "answeredById" UUID,
    "answeredAt" TIMESTAMPTZ(3),

    CONSTRAINT "TermReview_pkey" PRIMARY KEY ("clubId","squadId","termId")
);

-- CreateTable
CREATE TABLE "AuditEntry" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "personId" UUID,
    "action" TEXT NOT NULL,
    "objectKind" TEXT NOT NULL,
    "objectId" TEXT NOT NULL,
    "detail" JSONB NOT NULL,

    CONSTRAINT "AuditEntry_pkey" PRIMARY KEY ("clubId","id")
);

-- CreateIndex
CREATE INDEX "SquadCoach_clubId_squadId_idx" ON "SquadCoach"("clubId", "squadId");

-- CreateIndex
CREATE INDEX "SquadCoach_clubId_personId_idx" ON "SquadCoach"("clubId", "personId");

-- CreateIndex
CREATE INDEX "Guardianship_clubId_playerId_idx" ON "Guardianship"("clubId", "playerId");

-- CreateIndex
CREATE INDEX "SquadMembership_clubId_squadId_idx" ON "SquadMembership"("clubId", "squadId");

-- CreateIndex
CREATE INDEX "SquadMembership_clubId_playerId_idx" ON "SquadMembership"("clubId", "playerId");

-- CreateIndex
CREATE INDEX "Adjustment_clubId_playerId_idx" ON "Adjustment"("clubId", "playerId");

-- CreateIndex
CREATE INDEX "Theme_clubId_parentId_idx" ON "Theme"("clubId", "parentId");

-- CreateIndex
CREATE INDEX "Session_clubId_squadId_day_idx" ON "Session"("clubId", "squadId", "day");

-- CreateIndex
CREATE INDEX "RegisterLine_clubId_sessionId_idx" ON "RegisterLine"("clubId", "sessionId");

-- CreateIndex
CREATE UNIQUE INDEX "TurnEvent_clubId_sessionId_seq_key" ON "TurnEvent"("clubId", "sessionId", "seq");

-- CreateIndex
CREATE UNIQUE INDEX "TurnEvent_clubId_voidsId_key" ON "TurnEvent"("clubId", "voidsId");

-- CreateIndex
CREATE INDEX "MatchSpell_clubId_sessionId_idx" ON "MatchSpell"("clubId", "sessionId");

-- CreateIndex
CREATE INDEX "SessionPresence_clubId_playerId_idx" ON "SessionPresence"("clubId", "playerId");

-- CreateIndex
CREATE UNIQUE INDEX "FlagState_clubId_squadId_seasonId_playerId_rule_scope_subje_key" ON "FlagState"("clubId", "squadId", "seasonId", "playerId", "rule", "scope", "subject");

-- CreateIndex
CREATE INDEX "AuditEntry_clubId_at_idx" ON "AuditEntry"("clubId", "at");

-- AddForeignKey
ALTER TABLE "Person" ADD CONSTRAINT "Person_clubId_fkey" FOREIGN KEY ("clubId") REFERENCES "Club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Season" ADD CONSTRAINT "Season_clubId_fkey" FOREIGN KEY ("clubId") REFERENCES "Club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Term" ADD CONSTRAINT "Term_clubId_seasonId_fkey" FOREIGN KEY ("clubId", "seasonId") REFERENCES "Season"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Squad" ADD CONSTRAINT "Squad_clubId_fkey" FOREIGN KEY ("clubId") REFERENCES "Club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SquadCoach" ADD CONSTRAINT "SquadCoach_clubId_squadId_fkey" FOREIGN KEY ("clubId", "squadId") REFERENCES "Squad"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SquadCoach" ADD CONSTRAINT "SquadCoach_clubId_personId_fkey" FOREIGN KEY ("clubId", "personId") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Player" ADD CONSTRAINT "Player_clubId_fkey" FOREIGN KEY ("clubId") REFERENCES "Club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Guardianship" ADD CONSTRAINT "Guardianship_clubId_personId_fkey" FOREIGN KEY ("clubId", "personId") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Guardianship" ADD CONSTRAINT "Guardianship_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SquadMembership" ADD CONSTRAINT "SquadMembership_clubId_squadId_fkey" FOREIGN KEY ("clubId", "squadId") REFERENCES "Squad"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SquadMembership" ADD CONSTRAINT "SquadMembership_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Adjustment" ADD CONSTRAINT "Adjustment_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Theme" ADD CONSTRAINT "Theme_clubId_fkey" FOREIGN KEY ("clubId") REFERENCES "Club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Theme" ADD CONSTRAINT "Theme_clubId_parentId_fkey" FOREIGN KEY ("clubId", "parentId") REFERENCES "Theme"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ProgrammeEntry" ADD CONSTRAINT "ProgrammeEntry_clubId_squadId_fkey" FOREIGN KEY ("clubId", "squadId") REFERENCES "Squad"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ProgrammeEntry" ADD CONSTRAINT "ProgrammeEntry_clubId_termId_fkey" FOREIGN KEY ("clubId", "termId") REFERENCES "Term"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ProgrammeEntry" ADD CONSTRAINT "ProgrammeEntry_clubId_themeId_fkey" FOREIGN KEY ("clubId", "themeId") REFERENCES "Theme"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PracticeDesign" ADD CONSTRAINT "PracticeDesign_clubId_fkey" FOREIGN KEY ("clubId") REFERENCES "Club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PracticeDesign" ADD CONSTRAINT "PracticeDesign_clubId_themeId_fkey" FOREIGN KEY ("clubId", "themeId") REFERENCES "Theme"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Session" ADD CONSTRAINT "Session_clubId_fkey" FOREIGN KEY ("clubId") REFERENCES "Club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Session" ADD CONSTRAINT "Session_clubId_squadId_fkey" FOREIGN KEY ("clubId", "squadId") REFERENCES "Squad"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Session" ADD CONSTRAINT "Session_clubId_designId_fkey" FOREIGN KEY ("clubId", "designId") REFERENCES "PracticeDesign"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Session" ADD CONSTRAINT "Session_clubId_writtenById_fkey" FOREIGN KEY ("clubId", "writtenById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Session" ADD CONSTRAINT "Session_clubId_ledById_fkey" FOREIGN KEY ("clubId", "ledById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RegisterLine" ADD CONSTRAINT "RegisterLine_clubId_sessionId_fkey" FOREIGN KEY ("clubId", "sessionId") REFERENCES "Session"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RegisterLine" ADD CONSTRAINT "RegisterLine_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RegisterLine" ADD CONSTRAINT "RegisterLine_clubId_recordedById_fkey" FOREIGN KEY ("clubId", "recordedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RegisterLine" ADD CONSTRAINT "RegisterLine_clubId_voidedById_fkey" FOREIGN KEY ("clubId", "voidedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TurnEvent" ADD CONSTRAINT "TurnEvent_clubId_sessionId_fkey" FOREIGN KEY ("clubId", "sessionId") REFERENCES "Session"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TurnEvent" ADD CONSTRAINT "TurnEvent_clubId_themeId_fkey" FOREIGN KEY ("clubId", "themeId") REFERENCES "Theme"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TurnEvent" ADD CONSTRAINT "TurnEvent_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TurnEvent" ADD CONSTRAINT "TurnEvent_clubId_voidsId_fkey" FOREIGN KEY ("clubId", "voidsId") REFERENCES "TurnEvent"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TurnEvent" ADD CONSTRAINT "TurnEvent_clubId_recordedById_fkey" FOREIGN KEY ("clubId", "recordedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TurnSeat" ADD CONSTRAINT "TurnSeat_clubId_turnEventId_fkey" FOREIGN KEY ("clubId", "turnEventId") REFERENCES "TurnEvent"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TurnSeat" ADD CONSTRAINT "TurnSeat_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MatchSpell" ADD CONSTRAINT "MatchSpell_clubId_sessionId_fkey" FOREIGN KEY ("clubId", "sessionId") REFERENCES "Session"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MatchSpell" ADD CONSTRAINT "MatchSpell_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MatchSpell" ADD CONSTRAINT "MatchSpell_clubId_recordedById_fkey" FOREIGN KEY ("clubId", "recordedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MatchSpell" ADD CONSTRAINT "MatchSpell_clubId_voidedById_fkey" FOREIGN KEY ("clubId", "voidedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SessionTotal" ADD CONSTRAINT "SessionTotal_clubId_sessionId_fkey" FOREIGN KEY ("clubId", "sessionId") REFERENCES "Session"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Exposure" ADD CONSTRAINT "Exposure_clubId_sessionId_fkey" FOREIGN KEY ("clubId", "sessionId") REFERENCES "Session"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Exposure" ADD CONSTRAINT "Exposure_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SessionPresence" ADD CONSTRAINT "SessionPresence_clubId_sessionId_fkey" FOREIGN KEY ("clubId", "sessionId") REFERENCES "Session"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SessionPresence" ADD CONSTRAINT "SessionPresence_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PolicyVersion" ADD CONSTRAINT "PolicyVersion_clubId_fkey" FOREIGN KEY ("clubId") REFERENCES "Club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PolicyVersion" ADD CONSTRAINT "PolicyVersion_clubId_madeById_fkey" FOREIGN KEY ("clubId", "madeById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FlagState" ADD CONSTRAINT "FlagState_clubId_squadId_fkey" FOREIGN KEY ("clubId", "squadId") REFERENCES "Squad"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FlagState" ADD CONSTRAINT "FlagState_clubId_seasonId_fkey" FOREIGN KEY ("clubId", "seasonId") REFERENCES "Season"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FlagState" ADD CONSTRAINT "FlagState_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FlagState" ADD CONSTRAINT "FlagState_clubId_acknowledgedById_fkey" FOREIGN KEY ("clubId", "acknowledgedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TermReview" ADD CONSTRAINT "TermReview_clubId_squadId_fkey" FOREIGN KEY ("clubId", "squadId") REFERENCES "Squad"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TermReview" ADD CONSTRAINT "TermReview_clubId_termId_fkey" FOREIGN KEY ("clubId", "termId") REFERENCES "Term"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TermReview" ADD CONSTRAINT "TermReview_clubId_openedById_fkey" FOREIGN KEY ("clubId", "openedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TermReview" ADD CONSTRAINT "TermReview_clubId_answeredById_fkey" FOREIGN KEY ("clubId", "answeredById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "AuditEntry" ADD CONSTRAINT "AuditEntry_clubId_fkey" FOREIGN KEY ("clubId") REFERENCES "Club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "AuditEntry" ADD CONSTRAINT "AuditEntry_clubId_personId_fkey" FOREIGN KEY ("clubId", "personId") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;


-- Written by hand from here on: what Prisma's schema cannot say.

CREATE EXTENSION IF NOT EXISTS btree_gist;

-- One club at a time. The app says which at the start of each transaction; unsaid, there is none, and nothing is seen.
-- nullif: after a transaction the setting reads '' and not null.
CREATE FUNCTION app_club() RETURNS uuid LANGUAGE sql STABLE PARALLEL SAFE AS
  $$ SELECT nullif(current_setting('app.club_id', true), '')::uuid $$;

-- Guards a table by club. To be called for every new table that has a clubId.
CREATE FUNCTION guard_by_club(guarded regclass) RETURNS void LANGUAGE plpgsql AS $$
DECLARE
  club text := CASE WHEN guarded = '"Club"'::regclass THEN 'id' ELSE '"clubId"' END;
BEGIN
  EXECUTE format('ALTER TABLE %s ENABLE ROW LEVEL SECURITY', guarded);
  -- The owner too: a slip in a migration or a script stays within one club.
  EXECUTE format('ALTER TABLE %s FORCE ROW LEVEL SECURITY', guarded);
  EXECUTE format(
    'CREATE POLICY club_only ON %s USING (%s = (SELECT app_club())) WITH CHECK (%2$s = (SELECT app_club()))',
    guarded, club);
END $$;

SELECT guard_by_club(name::regclass) FROM unnest(ARRAY[
  '"Club"', '"Person"', '"Season"', '"Term"', '"Squad"', '"SquadCoach"', '"Player"', '"Guardianship"',
  '"SquadMembership"', '"Adjustment"', '"Theme"', '"ProgrammeEntry"', '"PracticeDesign"', '"Session"',
  '"RegisterLine"', '"TurnEvent"', '"TurnSeat"', '"MatchSpell"', '"SessionTotal"', '"Exposure"',
  '"SessionPresence"', '"PolicyVersion"', '"FlagState"', '"TermReview"', '"AuditEntry"'
]) AS name;

-- The owner may read which clubs there are, and the people of the demo's first page, before a club is chosen.
CREATE POLICY owner_lists_clubs ON "Club" FOR SELECT TO CURRENT_USER USING (true);
CREATE POLICY owner_lists_people ON "Person" FOR SELECT TO CURRENT_USER USING (true);

-- Whom the first page of a demo offers to sign in as; clubs that are no demo never show.
CREATE FUNCTION list_demo_people()
  RETURNS TABLE ("clubId" uuid, "clubName" text, "personId" uuid, "personName" text, "personRole" text)
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
    SELECT c.id, c.name, p.id, p.name, p.role::text
    FROM "Club" c JOIN "Person" p ON p."clubId" = c.id
    WHERE c."isDemo"
    ORDER BY c.name, c.id, p.role, p.name, p.id
  $$;
REVOKE EXECUTE ON FUNCTION list_demo_people() FROM PUBLIC;

-- Names and texts
ALTER TABLE "Club"
  ADD CONSTRAINT "Club_name_check" CHECK (char_length(name) BETWEEN 1 AND 80 AND name = btrim(name)),
  ADD CONSTRAINT "Club_timeZone_check" CHECK (char_length("timeZone") BETWEEN 1 AND 60),
  ADD CONSTRAINT "Club_locale_check" CHECK (locale ~ '^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$'),
  ADD CONSTRAINT "Club_calendarDay_check" CHECK ("calendarDay" IS NULL OR "isDemo");
ALTER TABLE "Person"
  ADD CONSTRAINT "Person_name_check" CHECK (char_length(name) BETWEEN 1 AND 80 AND name = btrim(name));
ALTER TABLE "Player"
  ADD CONSTRAINT "Player_name_check" CHECK (char_length(name) BETWEEN 1 AND 80 AND name = btrim(name)),
  ADD CONSTRAINT "Player_code_check" CHECK (char_length(code) BETWEEN 1 AND 200);
ALTER TABLE "Theme"
  ADD CONSTRAINT "Theme_name_check" CHECK (char_length(name) BETWEEN 1 AND 80 AND name = btrim(name)),
  ADD CONSTRAINT "Theme_asks_check" CHECK (char_length(asks) <= 300),
  ADD CONSTRAINT "Theme_code_check" CHECK (char_length(code) BETWEEN 1 AND 200),
  ADD CONSTRAINT "Theme_parent_check" CHECK ("parentId" <> id);
ALTER TABLE "TermReview"
  ADD CONSTRAINT "TermReview_answer_check" CHECK (
    char_length(answer) <= 2000
    AND num_nonnulls("answeredById", "answeredAt") = CASE WHEN answer = '' THEN 0 ELSE 2 END);
ALTER TABLE "AuditEntry"
  ADD CONSTRAINT "AuditEntry_text_check" CHECK (
    char_length(action) BETWEEN 1 AND 80
    AND char_length("objectKind") BETWEEN 1 AND 40
    AND char_length("objectId") BETWEEN 1 AND 80),
  ADD CONSTRAINT "AuditEntry_detail_check" CHECK (octet_length(detail::text) <= 65536);

-- Seasons, terms, squads: days in order, nothing twice at once
ALTER TABLE "Season"
  ADD CONSTRAINT "Season_name_check" CHECK (char_length(name) BETWEEN 1 AND 80 AND name = btrim(name)),
  ADD CONSTRAINT "Season_days_check" CHECK ("firstDay" <= "lastDay"),
  ADD CONSTRAINT "Season_one_at_a_time" EXCLUDE USING gist (
    "clubId" WITH =, daterange("firstDay", "lastDay", '[]') WITH &&);
ALTER TABLE "Term"
  ADD CONSTRAINT "Term_name_check" CHECK (char_length(name) BETWEEN 1 AND 80 AND name = btrim(name)),
  ADD CONSTRAINT "Term_days_check" CHECK ("firstDay" <= "lastDay"),
  ADD CONSTRAINT "Term_one_at_a_time" EXCLUDE USING gist (
    "clubId" WITH =, "seasonId" WITH =, daterange("firstDay", "lastDay", '[]') WITH &&);
ALTER TABLE "Squad"
  ADD CONSTRAINT "Squad_name_check" CHECK (char_length(name) BETWEEN 1 AND 80 AND name = btrim(name)),
  ADD CONSTRAINT "Squad_ageLimit_check" CHECK ("ageLimit" BETWEEN 3 AND 99);
ALTER TABLE "SquadCoach"
  ADD CONSTRAINT "SquadCoach_days_check" CHECK ("firstDay" <= "lastDay"),
  ADD CONSTRAINT "SquadCoach_one_at_a_time" EXCLUDE USING gist (
    "clubId" WITH =, "squadId" WITH =, "personId" WITH =, daterange("firstDay", "lastDay", '[]') WITH &&);
ALTER TABLE "SquadMembership"
  ADD CONSTRAINT "SquadMembership_days_check" CHECK ("firstDay" <= "lastDay"),
  ADD CONSTRAINT "SquadMembership_one_at_a_time" EXCLUDE USING gist (
    "clubId" WITH =, "squadId" WITH =, "playerId" WITH =, daterange("firstDay", "lastDay", '[]') WITH &&);
ALTER TABLE "Adjustment"
  ADD CONSTRAINT "Adjustment_days_check" CHECK ("firstDay" <= "lastDay"),
  ADD CONSTRAINT "Adjustment_dueShare_check" CHECK (
    (kind = 'fewerTurns') = ("dueShare" IS NOT NULL) AND "dueShare" BETWEEN 0 AND 1),
  ADD CONSTRAINT "Adjustment_one_at_a_time" EXCLUDE USING gist (
    "clubId" WITH =, "playerId" WITH =, kind WITH =, daterange("firstDay", "lastDay", '[]') WITH &&);
ALTER TABLE "ProgrammeEntry"
  ADD CONSTRAINT "ProgrammeEntry_wishedShare_check" CHECK ("wishedShare" BETWEEN 0 AND 1);

CREATE FUNCTION check_terms_inside_season() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  astray record;
BEGIN
  SELECT t.name AS term, s.name AS season, s."firstDay", s."lastDay" INTO astray
  FROM "Term" t JOIN "Season" s ON s."clubId" = t."clubId" AND s.id = t."seasonId"
  WHERE t."clubId" = NEW."clubId"
    AND s.id = CASE WHEN TG_TABLE_NAME = 'Season' THEN NEW.id ELSE (to_jsonb(NEW) ->> 'seasonId')::uuid END
    AND (t."firstDay" < s."firstDay" OR t."lastDay" > s."lastDay")
  LIMIT 1;
  IF FOUND THEN
    RAISE EXCEPTION 'The term "%" must lie inside the season "%", from % to %.',
      astray.term, astray.season, astray."firstDay", astray."lastDay"
      USING ERRCODE = 'check_violation', CONSTRAINT = 'Term_inside_season';
  END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER inside_season AFTER INSERT OR UPDATE ON "Term"
  FOR EACH ROW EXECUTE FUNCTION check_terms_inside_season();
CREATE TRIGGER holds_its_terms AFTER UPDATE ON "Season"
  FOR EACH ROW EXECUTE FUNCTION check_terms_inside_season();

CREATE FUNCTION check_theme_tree() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (
    WITH RECURSIVE above AS (
      SELECT NEW."parentId" AS id
      UNION
      SELECT t."parentId" FROM above JOIN "Theme" t ON t."clubId" = NEW."clubId" AND t.id = above.id
    )
    SELECT FROM above WHERE id = NEW.id
  ) THEN
    RAISE EXCEPTION 'The theme "%" cannot stand under one of its own.', NEW.name
      USING ERRCODE = 'check_violation', CONSTRAINT = 'Theme_tree';
  END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER stays_a_tree AFTER INSERT OR UPDATE OF "parentId" ON "Theme"
  FOR EACH ROW WHEN (NEW."parentId" IS NOT NULL) EXECUTE FUNCTION check_theme_tree();

-- Designs and sessions
ALTER TABLE "PracticeDesign"
  ADD CONSTRAINT "PracticeDesign_name_check" CHECK (char_length(name) BETWEEN 1 AND 80 AND name = btrim(name)),
  ADD CONSTRAINT "PracticeDesign_note_check" CHECK (char_length(note) <= 2000),
  ADD CONSTRAINT "PracticeDesign_area_check" CHECK (
    "areaLengthM" > 0 AND "areaLengthM" <= 200 AND "areaWidthM" > 0 AND "areaWidthM" <= 200),
  ADD CONSTRAINT "PracticeDesign_rounds_check" CHECK (jsonb_typeof(rounds) = 'array');
ALTER TABLE "Session"
  ADD CONSTRAINT "Session_title_check" CHECK (char_length(title) <= 120),
  ADD CONSTRAINT "Session_code_check" CHECK (char_length(code) BETWEEN 1 AND 200),
  ADD CONSTRAINT "Session_startsAt_check" CHECK ("startsAt" ~ '^([01][0-9]|2[0-3]):[0-5][0-9]$'),
  ADD CONSTRAINT "Session_lengthSeconds_check" CHECK ("lengthSeconds" >= 0),
  ADD CONSTRAINT "Session_periods_check" CHECK (periods IS NULL OR (kind = 'match' AND jsonb_typeof(periods) = 'array')),
  ADD CONSTRAINT "Session_design_check" CHECK ("designId" IS NULL OR kind = 'practice'),
  ADD CONSTRAINT "Session_written_check" CHECK (
    CASE WHEN written = 'notWritten' THEN num_nonnulls("writtenAt", "writtenById") = 0 ELSE "writtenAt" IS NOT NULL END);

-- The register: at any second of a session a player is in one state
ALTER TABLE "RegisterLine"
  ADD CONSTRAINT "RegisterLine_time_check" CHECK ("fromSecond" >= 0 AND "fromSecond" < "toSecond"),
  ADD CONSTRAINT "RegisterLine_void_check" CHECK ("voidedAt" IS NOT NULL OR "voidedById" IS NULL),
  ADD CONSTRAINT "RegisterLine_one_at_a_time" EXCLUDE USING gist (
    "clubId" WITH =, "sessionId" WITH =, "playerId" WITH =, int4range("fromSecond", "toSecond") WITH &&)
    WHERE ("voidedAt" IS NULL);

-- Turns: each kind of event has its own columns and no others
ALTER TABLE "TurnEvent"
  ADD CONSTRAINT "TurnEvent_seq_check" CHECK (seq >= 1),
  ADD CONSTRAINT "TurnEvent_kind_check" CHECK (CASE kind
    WHEN 'turn' THEN num_nulls("startSecond", "endSecond", "stationCount") = 0
      AND num_nonnulls("playerId", role, "lengthSeconds", "voidsId") = 0
    WHEN 'passed' THEN num_nulls("playerId", role, "lengthSeconds") = 0
      AND num_nonnulls("startSecond", "endSecond", "stationCount", round, "themeId", "chosenBy", "voidsId") = 0
      AND NOT "continuesWait"
    WHEN 'void' THEN "voidsId" IS NOT NULL
      AND num_nonnulls("startSecond", "endSecond", "stationCount", round, "themeId", "chosenBy",
        "playerId", role, "lengthSeconds") = 0
      AND NOT "continuesWait"
    END),
  ADD CONSTRAINT "TurnEvent_time_check" CHECK ("startSecond" >= 0 AND "startSecond" < "endSecond"),
  ADD CONSTRAINT "TurnEvent_length_check" CHECK ("lengthSeconds" >= 0),
  ADD CONSTRAINT "TurnEvent_stationCount_check" CHECK ("stationCount" BETWEEN 0 AND 1000),
  ADD CONSTRAINT "TurnEvent_round_check" CHECK (char_length(round) BETWEEN 1 AND 120);
ALTER TABLE "TurnSeat"
  ADD CONSTRAINT "TurnSeat_place_check" CHECK (station >= 1 AND place >= 1),
  ADD CONSTRAINT "TurnSeat_one_player" UNIQUE ("clubId", "turnEventId", station, role, place);

-- Rows just inserted have no statistics, and a whole season may come at once: each look-up below is a subquery of its
-- own, which goes by the key whatever the planner believes of the sizes.
CREATE FUNCTION check_turn_events() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  wrong record;
BEGIN
  SELECT a."sessionId" INTO wrong
  FROM (SELECT DISTINCT "clubId", "sessionId" FROM added) a
  WHERE (SELECT s.kind FROM "Session" s WHERE s."clubId" = a."clubId" AND s.id = a."sessionId") <> 'practice' LIMIT 1;
  IF FOUND THEN
    RAISE EXCEPTION 'Turns belong to practices; session % is a match.', wrong."sessionId"
      USING ERRCODE = 'check_violation', CONSTRAINT = 'TurnEvent_of_practice';
  END IF;

  -- An event that is not there at all is for the foreign key to refuse.
  SELECT a.id, a."voidsId" INTO wrong
  FROM added a
  WHERE a.kind = 'void' AND (
    SELECT t.kind = 'void' OR t."sessionId" <> a."sessionId" OR t.seq >= a.seq
    FROM "TurnEvent" t WHERE t."clubId" = a."clubId" AND t.id = a."voidsId") LIMIT 1;
  IF FOUND THEN
    RAISE EXCEPTION 'Event % cannot void %: only an earlier turn or pass of the same session can be voided.',
      wrong.id, wrong."voidsId"
      USING ERRCODE = 'check_violation', CONSTRAINT = 'TurnEvent_voids_event';
  END IF;

  SELECT a."sessionId", live."startSecond", live."lastEnd" INTO wrong
  FROM (SELECT DISTINCT "clubId", "sessionId" FROM added WHERE kind = 'turn') a,
    LATERAL (
      SELECT t."startSecond", lag(t."endSecond") OVER (ORDER BY t."startSecond") AS "lastEnd"
      FROM "TurnEvent" t
      WHERE t."clubId" = a."clubId" AND t."sessionId" = a."sessionId" AND t.kind = 'turn'
        AND (SELECT v.id FROM "TurnEvent" v WHERE v."clubId" = t."clubId" AND v."voidsId" = t.id) IS NULL
    ) live
  WHERE live."startSecond" < live."lastEnd" LIMIT 1;
  IF FOUND THEN
    RAISE EXCEPTION 'Two turns of session % overlap: one begins at second %, before another has ended at second %.',
      wrong."sessionId", wrong."startSecond", wrong."lastEnd"
      USING ERRCODE = 'check_violation', CONSTRAINT = 'TurnEvent_one_at_a_time';
  END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER fits_its_session AFTER INSERT ON "TurnEvent"
  REFERENCING NEW TABLE AS added FOR EACH STATEMENT EXECUTE FUNCTION check_turn_events();

-- A turn is written whole: its seats come in its own transaction and never after it.
CREATE FUNCTION check_turn_seats() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  wrong record;
BEGIN
  SELECT a."turnEventId", a.station INTO wrong
  FROM added a
  WHERE (
    SELECT t.kind <> 'turn' OR a.station > t."stationCount" OR t.xmin <> pg_current_xact_id()::xid
    FROM "TurnEvent" t WHERE t."clubId" = a."clubId" AND t.id = a."turnEventId") LIMIT 1;
  IF FOUND THEN
    RAISE EXCEPTION 'Event % takes no place at station %: places are written with their turn, at one of its stations.',
      wrong."turnEventId", wrong.station
      USING ERRCODE = 'check_violation', CONSTRAINT = 'TurnSeat_of_turn';
  END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER fits_its_turn AFTER INSERT ON "TurnSeat"
  REFERENCING NEW TABLE AS added FOR EACH STATEMENT EXECUTE FUNCTION check_turn_seats();

-- Matches
ALTER TABLE "MatchSpell"
  ADD CONSTRAINT "MatchSpell_time_check" CHECK ("startSecond" >= 0 AND "startSecond" < "endSecond"),
  ADD CONSTRAINT "MatchSpell_void_check" CHECK ("voidedAt" IS NOT NULL OR "voidedById" IS NULL),
  ADD CONSTRAINT "MatchSpell_one_at_a_time" EXCLUDE USING gist (
    "clubId" WITH =, "sessionId" WITH =, "playerId" WITH =, int4range("startSecond", "endSecond") WITH &&)
    WHERE ("voidedAt" IS NULL);

CREATE FUNCTION check_match_spells() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  wrong record;
BEGIN
  SELECT a."sessionId" INTO wrong
  FROM (SELECT DISTINCT "clubId", "sessionId" FROM added) a
  WHERE (SELECT s.kind FROM "Session" s WHERE s."clubId" = a."clubId" AND s.id = a."sessionId") <> 'match' LIMIT 1;
  IF FOUND THEN
    RAISE EXCEPTION 'Spells belong to matches; session % is a practice.', wrong."sessionId"
      USING ERRCODE = 'check_violation', CONSTRAINT = 'MatchSpell_of_match';
  END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER fits_its_session AFTER INSERT ON "MatchSpell"
  REFERENCING NEW TABLE AS added FOR EACH STATEMENT EXECUTE FUNCTION check_match_spells();

-- The cache. "< 'Infinity'" also refuses what is not a number: PostgreSQL sorts it above every number.
ALTER TABLE "SessionTotal"
  ADD CONSTRAINT "SessionTotal_liveSeconds_check" CHECK ("liveSeconds" >= 0);
ALTER TABLE "Exposure"
  ADD CONSTRAINT "Exposure_figures_check" CHECK (
    seconds >= 0 AND seconds < 'Infinity' AND turns >= 0
    AND "fairSeconds" >= 0 AND "fairSeconds" < 'Infinity'
    AND "fairTurns" >= 0 AND "fairTurns" < 'Infinity'
    AND "fullFairSeconds" >= 0 AND "fullFairSeconds" < 'Infinity'
    AND "membersFairSeconds" >= 0 AND "membersFairSeconds" < 'Infinity'
    AND "openGoalFairSeconds" >= 0 AND "openGoalFairSeconds" < 'Infinity'),
  ADD CONSTRAINT "Exposure_column_check" CHECK (role IN ('attack', 'defend') OR (situation = 'none' AND line = 'none'));
ALTER TABLE "SessionPresence"
  ADD CONSTRAINT "SessionPresence_figures_check" CHECK (
    "liveSeconds" >= 0 AND "turnsPresent" >= 0 AND "longestRestTurns" BETWEEN 0 AND "turnsPresent");

-- The club's rules, and what they raised
ALTER TABLE "PolicyVersion"
  ADD CONSTRAINT "PolicyVersion_ageLimit_check" CHECK ("ageLimit" BETWEEN 3 AND 99),
  ADD CONSTRAINT "PolicyVersion_counts_check" CHECK (
    "toleranceSeconds" >= 0 AND "restLimitTurns" >= 1 AND "sessionsBeforeFlags" >= 0 AND "matchesBeforeRoles" >= 0),
  ADD CONSTRAINT "PolicyVersion_shares_check" CHECK (
    "toleranceShare" BETWEEN 0 AND 1 AND "middleAttackShare" BETWEEN 0 AND 1 AND "goalShareLimit" BETWEEN 0 AND 1
    AND "leastMatchShare" BETWEEN 0 AND 1 AND "writtenShareNeeded" BETWEEN 0 AND 1);
ALTER TABLE "FlagState"
  ADD CONSTRAINT "FlagState_rule_check" CHECK (char_length(rule) BETWEEN 1 AND 60 AND char_length(subject) <= 80),
  ADD CONSTRAINT "FlagState_figures_check" CHECK (
    "gapSeconds" > '-Infinity' AND "gapSeconds" < 'Infinity'
    AND "toleranceSeconds" >= 0 AND "toleranceSeconds" < 'Infinity' AND size >= 0 AND size < 'Infinity'),
  ADD CONSTRAINT "FlagState_answer_check" CHECK (
    num_nulls("acknowledgedAt", "acknowledgedById", "acknowledgedReason", "acknowledgedSize") IN (0, 4)
    AND (status <> 'acknowledged' OR "acknowledgedAt" IS NOT NULL)
    AND (status = 'cleared') = ("clearedAt" IS NOT NULL)
    AND char_length("acknowledgedReason") BETWEEN 1 AND 300);

-- What is written stays written
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'What stands in % is never changed or removed: write a correction after it.', TG_TABLE_NAME
    USING ERRCODE = 'restrict_violation', CONSTRAINT = TG_TABLE_NAME || '_append_only';
END $$;

CREATE FUNCTION allow_only_voiding() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."voidedAt" IS NOT NULL OR NEW."voidedAt" IS NULL
    OR to_jsonb(NEW) - 'voidedAt' - 'voidedById' <> to_jsonb(OLD) - 'voidedAt' - 'voidedById'
  THEN
    RAISE EXCEPTION 'What stands in % can be voided, once, and not changed otherwise.', TG_TABLE_NAME
      USING ERRCODE = 'restrict_violation', CONSTRAINT = TG_TABLE_NAME || '_append_only';
  END IF;
  RETURN NEW;
END $$;

DO $$
DECLARE
  kept text;
BEGIN
  FOREACH kept IN ARRAY ARRAY['TurnEvent', 'TurnSeat', 'PolicyVersion', 'AuditEntry'] LOOP
    EXECUTE format('CREATE TRIGGER stays_written BEFORE UPDATE OR DELETE OR TRUNCATE ON %I
      FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', kept);
  END LOOP;
  FOREACH kept IN ARRAY ARRAY['RegisterLine', 'MatchSpell'] LOOP
    EXECUTE format('CREATE TRIGGER stays_written BEFORE DELETE OR TRUNCATE ON %I
      FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', kept);
    EXECUTE format('CREATE TRIGGER voided_once BEFORE UPDATE ON %I
      FOR EACH ROW EXECUTE FUNCTION allow_only_voiding()', kept);
  END LOOP;
END $$;

-- Gives the app's role what it needs, table by table, and takes away whatever else it had. Called below when the role
-- is there already, and by whoever makes the role later.
CREATE FUNCTION grant_app_rights(app_role name) RETURNS void LANGUAGE plpgsql AS $$
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
    ('Player', 'SELECT, INSERT, UPDATE (name, keeps, "wantsToKeep")'),
    ('Guardianship', 'SELECT, INSERT, DELETE'),
    ('SquadMembership', 'SELECT, INSERT, UPDATE ("firstDay", "lastDay")'),
    ('Adjustment', 'SELECT, INSERT, UPDATE ("lastDay")'),
    ('Theme', 'SELECT, INSERT, UPDATE (name, "parentId", "order", asks)'),
    ('ProgrammeEntry', 'SELECT, INSERT, UPDATE ("wishedShare"), DELETE'),
    ('PracticeDesign', 'SELECT, INSERT, UPDATE (name, "themeId", "areaLengthM", "areaWidthM", rounds, note)'),
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
    ('TermReview', 'SELECT, INSERT, UPDATE (answer, "answeredById", "answeredAt")'),
    ('AuditEntry', 'SELECT, INSERT')
  ) AS rights (of_table, allowed) LOOP
    EXECUTE format('GRANT %s ON %I TO %I', item.allowed, item.of_table, app_role);
  END LOOP;
END $$;
REVOKE EXECUTE ON FUNCTION grant_app_rights(name) FROM PUBLIC;
REVOKE EXECUTE ON FUNCTION guard_by_club(regclass) FROM PUBLIC;

DO $$
BEGIN
  IF EXISTS (SELECT FROM pg_roles WHERE rolname = 'turnbook_app') THEN
    PERFORM grant_app_rights('turnbook_app');
  END IF;
END $$;
