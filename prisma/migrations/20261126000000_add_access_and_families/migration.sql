CREATE TYPE "LinkKind" AS ENUM ('join', 'family', 'recover');
CREATE TYPE "RequestKind" AS ENUM ('copy', 'correction', 'erasure', 'objection', 'question');
CREATE TYPE "RequestOutcome" AS ENUM ('done', 'refused', 'withdrawn');
CREATE TYPE "ErasureCause" AS ENUM ('request', 'retention');

ALTER TYPE "SquadCoachKind" ADD VALUE 'helps';

ALTER TABLE "Club" ADD COLUMN     "retentionMonths" INTEGER, ADD COLUMN     "askWhom" TEXT NOT NULL DEFAULT '',
  ADD COLUMN     "holidays" TEXT NOT NULL DEFAULT '';
ALTER TABLE "Person" ADD COLUMN     "email" TEXT, ADD COLUMN     "loginId" UUID, ADD COLUMN     "accessEndedAt" TIMESTAMPTZ(3);
ALTER TABLE "Squad" ADD COLUMN     "showsComing" BOOLEAN NOT NULL DEFAULT false;
ALTER TABLE "Player" ADD COLUMN     "erasedAt" TIMESTAMPTZ(3);
ALTER TABLE "Guardianship" ADD COLUMN     "claimedAt" TIMESTAMPTZ(3), ADD COLUMN     "withholdsComing" BOOLEAN NOT NULL DEFAULT false, ADD COLUMN     "recordedById" UUID, ADD COLUMN     "recordedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP;
ALTER TABLE "Session" ADD COLUMN     "place" TEXT NOT NULL DEFAULT '';
CREATE TABLE "Login" (
    "id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL DEFAULT false,
    "name" TEXT NOT NULL,
    "image" TEXT,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Login_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "LoginSession" (
    "id" UUID NOT NULL,
    "loginId" UUID NOT NULL,
    "token" TEXT NOT NULL,
    "expiresAt" TIMESTAMPTZ(3) NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "clubId" UUID,
    "personId" UUID,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "LoginSession_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "LoginMethod" (
    "id" UUID NOT NULL,
    "loginId" UUID NOT NULL,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "password" TEXT,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" TIMESTAMPTZ(3),
    "refreshTokenExpiresAt" TIMESTAMPTZ(3),
    "scope" TEXT,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "LoginMethod_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "LoginProof" (
    "id" UUID NOT NULL,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" TIMESTAMPTZ(3) NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "LoginProof_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "Passkey" (
    "id" TEXT NOT NULL,
    "loginId" UUID NOT NULL,
    "publicKey" BYTEA NOT NULL,
    "counter" BIGINT NOT NULL,
    "transports" TEXT[],
    "isBackedUp" BOOLEAN NOT NULL,
    "name" TEXT NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "lastUsedAt" TIMESTAMPTZ(3),

    CONSTRAINT "Passkey_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "RateLimit" (
    "key" VARCHAR(255) NOT NULL,
    "points" INTEGER NOT NULL DEFAULT 0,
    "expire" BIGINT,

    CONSTRAINT "RateLimit_pkey" PRIMARY KEY ("key")
);

CREATE TABLE "OneTimeLink" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "kind" "LinkKind" NOT NULL,
    "personId" UUID NOT NULL,
    "playerId" UUID,
    "secretHash" TEXT NOT NULL,
    "expiresAt" TIMESTAMPTZ(3) NOT NULL,
    "madeById" UUID,
    "madeAt" TIMESTAMPTZ(3) NOT NULL,
    "usedAt" TIMESTAMPTZ(3),
    "revokedAt" TIMESTAMPTZ(3),

    CONSTRAINT "OneTimeLink_pkey" PRIMARY KEY ("clubId","id")
);

CREATE TABLE "FamilyPage" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "squadId" UUID NOT NULL,
    "seasonId" UUID NOT NULL,
    "page" JSONB NOT NULL,
    "confirmedById" UUID,
    "confirmedAt" TIMESTAMPTZ(3) NOT NULL,
    "showsFrom" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "FamilyPage_pkey" PRIMARY KEY ("clubId","id")
);

CREATE TABLE "FamilyNote" (
    "clubId" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "squadId" UUID NOT NULL,
    "text" TEXT NOT NULL,
    "writtenById" UUID,
    "writtenAt" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "FamilyNote_pkey" PRIMARY KEY ("clubId","playerId","squadId")
);

CREATE TABLE "ChildRequest" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "kind" "RequestKind" NOT NULL,
    "text" TEXT NOT NULL DEFAULT '',
    "askedById" UUID,
    "receivedOn" DATE NOT NULL,
    "dueOn" DATE NOT NULL,
    "extendedTo" DATE,
    "extendedWhy" TEXT NOT NULL DEFAULT '',
    "outcome" "RequestOutcome",
    "answer" TEXT NOT NULL DEFAULT '',
    "answeredById" UUID,
    "answeredAt" TIMESTAMPTZ(3),

    CONSTRAINT "ChildRequest_pkey" PRIMARY KEY ("clubId","id")
);

CREATE TABLE "Consent" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "wording" TEXT NOT NULL,
    "givenById" UUID,
    "givenOn" DATE NOT NULL,
    "recordedById" UUID,
    "recordedAt" TIMESTAMPTZ(3) NOT NULL,
    "withdrawnOn" DATE,

    CONSTRAINT "Consent_pkey" PRIMARY KEY ("clubId","id")
);

CREATE TABLE "Erasure" (
    "clubId" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "cause" "ErasureCause" NOT NULL,
    "erasedAt" TIMESTAMPTZ(3) NOT NULL,
    "erasedById" UUID,

    CONSTRAINT "Erasure_pkey" PRIMARY KEY ("clubId","playerId")
);


CREATE UNIQUE INDEX "Person_clubId_loginId_key" ON "Person"("clubId", "loginId");
CREATE INDEX "Person_loginId_idx" ON "Person"("loginId");
CREATE UNIQUE INDEX "Login_email_key" ON "Login"("email");
CREATE UNIQUE INDEX "LoginSession_token_key" ON "LoginSession"("token");
CREATE INDEX "LoginSession_loginId_idx" ON "LoginSession"("loginId");
CREATE INDEX "LoginSession_expiresAt_idx" ON "LoginSession"("expiresAt");
CREATE UNIQUE INDEX "LoginMethod_providerId_accountId_key" ON "LoginMethod"("providerId", "accountId");
CREATE INDEX "LoginMethod_loginId_idx" ON "LoginMethod"("loginId");
CREATE INDEX "LoginProof_identifier_idx" ON "LoginProof"("identifier");
CREATE INDEX "LoginProof_expiresAt_idx" ON "LoginProof"("expiresAt");
CREATE INDEX "Passkey_loginId_idx" ON "Passkey"("loginId");
CREATE INDEX "OneTimeLink_clubId_personId_idx" ON "OneTimeLink"("clubId", "personId");
CREATE INDEX "OneTimeLink_clubId_playerId_idx" ON "OneTimeLink"("clubId", "playerId");
CREATE INDEX "FamilyPage_clubId_playerId_showsFrom_idx" ON "FamilyPage"("clubId", "playerId", "showsFrom");
CREATE INDEX "FamilyPage_clubId_squadId_seasonId_idx" ON "FamilyPage"("clubId", "squadId", "seasonId");
CREATE INDEX "ChildRequest_clubId_playerId_idx" ON "ChildRequest"("clubId", "playerId");
CREATE INDEX "Consent_clubId_playerId_idx" ON "Consent"("clubId", "playerId");

ALTER TABLE "Person" ADD CONSTRAINT "Person_loginId_fkey" FOREIGN KEY ("loginId") REFERENCES "Login"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "Guardianship" ADD CONSTRAINT "Guardianship_clubId_recordedById_fkey" FOREIGN KEY ("clubId", "recordedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "LoginSession" ADD CONSTRAINT "LoginSession_loginId_fkey" FOREIGN KEY ("loginId") REFERENCES "Login"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "LoginMethod" ADD CONSTRAINT "LoginMethod_loginId_fkey" FOREIGN KEY ("loginId") REFERENCES "Login"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "Passkey" ADD CONSTRAINT "Passkey_loginId_fkey" FOREIGN KEY ("loginId") REFERENCES "Login"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "OneTimeLink" ADD CONSTRAINT "OneTimeLink_clubId_personId_fkey" FOREIGN KEY ("clubId", "personId") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "OneTimeLink" ADD CONSTRAINT "OneTimeLink_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "OneTimeLink" ADD CONSTRAINT "OneTimeLink_clubId_madeById_fkey" FOREIGN KEY ("clubId", "madeById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "FamilyPage" ADD CONSTRAINT "FamilyPage_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "FamilyPage" ADD CONSTRAINT "FamilyPage_clubId_squadId_fkey" FOREIGN KEY ("clubId", "squadId") REFERENCES "Squad"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "FamilyPage" ADD CONSTRAINT "FamilyPage_clubId_seasonId_fkey" FOREIGN KEY ("clubId", "seasonId") REFERENCES "Season"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "FamilyPage" ADD CONSTRAINT "FamilyPage_clubId_confirmedById_fkey" FOREIGN KEY ("clubId", "confirmedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "FamilyNote" ADD CONSTRAINT "FamilyNote_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "FamilyNote" ADD CONSTRAINT "FamilyNote_clubId_squadId_fkey" FOREIGN KEY ("clubId", "squadId") REFERENCES "Squad"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "FamilyNote" ADD CONSTRAINT "FamilyNote_clubId_writtenById_fkey" FOREIGN KEY ("clubId", "writtenById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "ChildRequest" ADD CONSTRAINT "ChildRequest_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "ChildRequest" ADD CONSTRAINT "ChildRequest_clubId_askedById_fkey" FOREIGN KEY ("clubId", "askedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "ChildRequest" ADD CONSTRAINT "ChildRequest_clubId_answeredById_fkey" FOREIGN KEY ("clubId", "answeredById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "Consent" ADD CONSTRAINT "Consent_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "Consent" ADD CONSTRAINT "Consent_clubId_givenById_fkey" FOREIGN KEY ("clubId", "givenById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "Consent" ADD CONSTRAINT "Consent_clubId_recordedById_fkey" FOREIGN KEY ("clubId", "recordedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "Erasure" ADD CONSTRAINT "Erasure_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "Erasure" ADD CONSTRAINT "Erasure_clubId_erasedById_fkey" FOREIGN KEY ("clubId", "erasedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;


-- Written by hand from here on.

-- Who can sign in
ALTER TABLE "Login"
  ADD CONSTRAINT "Login_email_check" CHECK (
    char_length(email) BETWEEN 3 AND 254 AND email = lower(email) AND email ~ '^[^@[:space:]]+@[^@[:space:]]+$'),
  ADD CONSTRAINT "Login_name_check" CHECK (char_length(name) BETWEEN 1 AND 80 AND name = btrim(name));
ALTER TABLE "LoginSession"
  ADD CONSTRAINT "LoginSession_token_check" CHECK (token ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT "LoginSession_as_check" CHECK (num_nulls("clubId", "personId") IN (0, 2));
ALTER TABLE "Passkey"
  ADD CONSTRAINT "Passkey_text_check" CHECK (
    char_length(id) BETWEEN 1 AND 1400 AND char_length(name) BETWEEN 1 AND 80 AND octet_length("publicKey") BETWEEN 1 AND 4096);
ALTER TABLE "Person"
  ADD CONSTRAINT "Person_email_check" CHECK (
    char_length(email) BETWEEN 3 AND 254 AND email = lower(email) AND email ~ '^[^@[:space:]]+@[^@[:space:]]+$');
ALTER TABLE "OneTimeLink"
  ADD CONSTRAINT "OneTimeLink_hash_check" CHECK ("secretHash" ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT "OneTimeLink_time_check" CHECK ("expiresAt" > "madeAt" AND ("usedAt" IS NULL OR "revokedAt" IS NULL)),
  ADD CONSTRAINT "OneTimeLink_player_check" CHECK ((kind = 'family') = ("playerId" IS NOT NULL));

-- Families
ALTER TABLE "Club"
  ADD CONSTRAINT "Club_retention_check" CHECK ("retentionMonths" BETWEEN 1 AND 120),
  ADD CONSTRAINT "Club_askWhom_check" CHECK (char_length("askWhom") <= 300),
  ADD CONSTRAINT "Club_holidays_check" CHECK (
    char_length(holidays) <= 4400 AND holidays ~ '^([0-9]{4}-[0-9]{2}-[0-9]{2}( [0-9]{4}-[0-9]{2}-[0-9]{2})*)?$');
ALTER TABLE "Session"
  ADD CONSTRAINT "Session_place_check" CHECK (char_length(place) <= 120);
ALTER TABLE "FamilyPage"
  ADD CONSTRAINT "FamilyPage_page_check" CHECK (jsonb_typeof(page) = 'object' AND octet_length(page::text) <= 262144),
  ADD CONSTRAINT "FamilyPage_time_check" CHECK ("showsFrom" >= "confirmedAt");
ALTER TABLE "FamilyNote"
  ADD CONSTRAINT "FamilyNote_text_check" CHECK (char_length(text) BETWEEN 1 AND 600);
ALTER TABLE "ChildRequest"
  ADD CONSTRAINT "ChildRequest_text_check" CHECK (
    char_length(text) <= 2000 AND char_length("extendedWhy") <= 600 AND char_length(answer) <= 2000),
  ADD CONSTRAINT "ChildRequest_days_check" CHECK (
    "dueOn" >= "receivedOn" AND ("extendedTo" IS NULL OR ("extendedTo" >= "dueOn" AND "extendedWhy" <> ''))),
  ADD CONSTRAINT "ChildRequest_answer_check" CHECK (
    num_nulls(outcome, "answeredAt") IN (0, 2) AND (outcome IS NOT NULL OR (answer = '' AND "answeredById" IS NULL)));
ALTER TABLE "Consent"
  ADD CONSTRAINT "Consent_text_check" CHECK (
    char_length(kind) BETWEEN 1 AND 40 AND char_length(wording) BETWEEN 1 AND 2000),
  ADD CONSTRAINT "Consent_days_check" CHECK ("withdrawnOn" >= "givenOn");

CREATE TRIGGER stays_written BEFORE UPDATE OR DELETE OR TRUNCATE ON "Erasure"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

SELECT guard_by_club(name::regclass) FROM unnest(ARRAY[
  '"OneTimeLink"', '"FamilyPage"', '"FamilyNote"', '"ChildRequest"', '"Consent"', '"Erasure"'
]) AS name;

-- The second wall for families. A transaction that serves a guardian says so, and from then on sees only that person's own
-- children, whatever is asked. coalesce and the boolean function keep the planner's estimates sound for everybody else.
CREATE FUNCTION app_guardian() RETURNS uuid LANGUAGE sql STABLE PARALLEL SAFE AS
  $$ SELECT nullif(current_setting('app.guardian_id', true), '')::uuid $$;
CREATE FUNCTION app_serves_guardian() RETURNS boolean LANGUAGE sql STABLE PARALLEL SAFE AS
  $$ SELECT coalesce(current_setting('app.guardian_id', true), '') <> '' $$;

-- The children whose page the guardian has claimed; null when no guardian is served.
CREATE FUNCTION app_children() RETURNS uuid[] LANGUAGE sql STABLE PARALLEL SAFE AS $$
  SELECT CASE WHEN app_serves_guardian() THEN ARRAY(
    SELECT g."playerId" FROM "Guardianship" g
    WHERE g."clubId" = app_club() AND g."personId" = app_guardian() AND g."claimedAt" IS NOT NULL
  ) END
$$;
-- The squads that those children are, or ever were, members of.
CREATE FUNCTION app_children_squads() RETURNS uuid[] LANGUAGE sql STABLE PARALLEL SAFE AS $$
  SELECT CASE WHEN app_serves_guardian() THEN ARRAY(
    SELECT m."squadId" FROM "SquadMembership" m WHERE m."clubId" = app_club() AND m."playerId" = ANY (app_children())
  ) END
$$;

-- Holds a guardian's transaction to some rows of a table: what it may see, and what it may add; it alters and removes nothing.
-- The planner takes an unknown condition to let half of the rows through, which for a coach made it choose joins that took
-- five times as long. An unknown value it takes to be not null almost always, which is true for everybody but a guardian.
CREATE FUNCTION hold_guardians(guarded regclass, sees text, adds text) RETURNS void LANGUAGE plpgsql AS $$
BEGIN
  EXECUTE format('CREATE POLICY guardian_sees ON %s AS RESTRICTIVE FOR SELECT USING (nullif(%s, false) IS NOT NULL)', guarded, sees);
  EXECUTE format('CREATE POLICY guardian_adds ON %s AS RESTRICTIVE FOR INSERT WITH CHECK (%s)', guarded, adds);
  EXECUTE format('CREATE POLICY guardian_alters ON %s AS RESTRICTIVE FOR UPDATE USING (NOT (SELECT app_serves_guardian()))', guarded);
  EXECUTE format('CREATE POLICY guardian_removes ON %s AS RESTRICTIVE FOR DELETE USING (NOT (SELECT app_serves_guardian()))', guarded);
END $$;

DO $$
DECLARE
  item record;
  nobody text := 'NOT (SELECT app_serves_guardian())';
  own_child text := 'coalesce(%s = ANY ((SELECT app_children())::uuid[]), NOT (SELECT app_serves_guardian()))';
  own_squad text := 'coalesce(%s = ANY ((SELECT app_children_squads())::uuid[]), NOT (SELECT app_serves_guardian()))';
  own_person text := 'coalesce(%s = (SELECT app_guardian()), NOT (SELECT app_serves_guardian()))';
  -- Guardians of one child do not see what the other asks or agrees to.
  own_child_asked text := format(own_child, '"playerId"') || ' AND ' || format(own_person, '"askedById"');
BEGIN
  FOR item IN SELECT * FROM (VALUES
    ('Player', format(own_child, 'id'), nobody),
    ('KeepsChange', format(own_child, '"playerId"'), nobody),
    ('SquadMembership', format(own_child, '"playerId"'), nobody),
    ('Adjustment', format(own_child, '"playerId"'), nobody),
    ('RegisterLine', format(own_child, '"playerId"'), nobody),
    ('TurnSeat', format(own_child, '"playerId"'), nobody),
    ('MatchSpell', format(own_child, '"playerId"'), nobody),
    ('Exposure', format(own_child, '"playerId"'), nobody),
    ('SessionPresence', format(own_child, '"playerId"'), nobody),
    ('FlagState', format(own_child, '"playerId"'), nobody),
    -- What is confirmed is not seen before its morning.
    ('FamilyPage', format(own_child, '"playerId"') || ' AND ("showsFrom" <= now() OR NOT (SELECT app_serves_guardian()))', nobody),
    ('FamilyNote', nobody, nobody),
    ('ChildRequest', own_child_asked, own_child_asked),
    ('Consent', format(own_child, '"playerId"') || ' AND ' || format(own_person, '"givenById"'), nobody),
    ('Guardianship', format(own_person, '"personId"'), nobody),
    ('Person', format(own_person, 'id'), nobody),
    ('Squad', format(own_squad, 'id'), nobody),
    ('Session', format(own_squad, '"squadId"'), nobody),
    ('AuditEntry', nobody, format(own_person, '"personId"')),
    ('TurnEvent', nobody, nobody),
    ('SquadCoach', nobody, nobody),
    ('PlayerPair', nobody, nobody),
    ('SessionPlan', nobody, nobody),
    ('PitchEvent', nobody, nobody),
    ('HelperPass', nobody, nobody),
    ('TermReview', nobody, nobody),
    ('OneTimeLink', nobody, nobody),
    ('Erasure', nobody, nobody)
  ) AS held (of_table, sees, adds) LOOP
    PERFORM hold_guardians(format('%I', item.of_table)::regclass, item.sees, item.adds);
  END LOOP;
  -- Nothing of a child stands in these: a guardian's transaction reads them and writes none.
  FOR item IN SELECT unnest(ARRAY['Club', 'Season', 'Term', 'Theme', 'ProgrammeEntry', 'PracticeDesign', 'PolicyVersion',
    'SessionTotal']) AS of_table LOOP
    PERFORM hold_guardians(format('%I', item.of_table)::regclass, 'true', nobody);
  END LOOP;
END $$;

-- Asked before a club is known: as whom a sign-in is known, and in which clubs. Ended access does not show.
CREATE FUNCTION list_people_of_login(login uuid)
  RETURNS TABLE ("clubId" uuid, "clubName" text, "isDemo" boolean, "personId" uuid, "personName" text, "personRole" text)
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
    SELECT c.id, c.name, c."isDemo", p.id, p.name, p.role::text
    FROM "Person" p JOIN "Club" c ON c.id = p."clubId"
    WHERE p."loginId" = login AND p."accessEndedAt" IS NULL
    ORDER BY c.name, c.id, p.name, p.id
  $$;

-- Whom the first page of a demo offers to sign in as: nobody who has a sign-in of their own by now, whose address and
-- passkeys a stranger's button would open.
CREATE OR REPLACE FUNCTION list_demo_people()
  RETURNS TABLE ("clubId" uuid, "clubName" text, "personId" uuid, "personName" text, "personRole" text)
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
    SELECT c.id, c.name, p.id, p.name, p.role::text
    FROM "Club" c JOIN "Person" p ON p."clubId" = c.id
    WHERE c."isDemo" AND p."accessEndedAt" IS NULL
      AND NOT EXISTS (SELECT FROM "Login" l WHERE l.id = p."loginId" AND l.email NOT LIKE '%@demo.invalid')
    ORDER BY c.name, c.id, p.role, p.name, p.id
  $$;

-- What stands here before anybody is signed in: no club yet, demo clubs, clubs of people.
CREATE FUNCTION what_stands_here() RETURNS TABLE ("hasDemo" boolean, "hasClub" boolean)
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
    SELECT EXISTS (SELECT FROM "Club" WHERE "isDemo"), EXISTS (SELECT FROM "Club" WHERE NOT "isDemo")
  $$;

-- Which tables stand here, for whoever asks whether the pages and they fit together. The record of migrations itself stays closed.
CREATE FUNCTION newest_migration() RETURNS text
  LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
BEGIN
  RETURN (SELECT max(migration_name) FROM "_prisma_migrations" WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL);
END $$;

-- Makes the first club and its administrator, once: a database that holds any club, a demo's too, takes no other this way.
-- To be called inside the new club (app.club_id). Whoever calls has checked the code of the set-up page.
CREATE FUNCTION found_club(club_name text, time_zone text, its_locale text, person uuid, person_name text, login uuid)
  RETURNS void LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
BEGIN
  LOCK TABLE "Club" IN SHARE ROW EXCLUSIVE MODE;
  IF EXISTS (SELECT FROM "Club") THEN
    RAISE EXCEPTION 'A club stands here already.' USING ERRCODE = 'unique_violation', CONSTRAINT = 'found_club_once';
  END IF;
  INSERT INTO "Club" (id, name, "timeZone", locale, "isDemo") VALUES (app_club(), club_name, time_zone, its_locale, false);
  INSERT INTO "Person" ("clubId", id, name, role, "loginId")
    VALUES (app_club(), person, person_name, 'administrator', login);
END $$;

REVOKE EXECUTE ON FUNCTION list_people_of_login(uuid), what_stands_here(), newest_migration(), found_club(text, text, text, uuid, text, uuid),
  hold_guardians(regclass, text, text) FROM PUBLIC;

-- The family's right to be forgotten. What names a child goes; its turns, times and who it is a member with stay, as a
-- column without a name, because every other child's even share was reckoned with it.
CREATE FUNCTION plan_without(plan jsonb, player uuid) RETURNS jsonb LANGUAGE sql IMMUTABLE AS $$
  SELECT plan || jsonb_build_object(
    'players', (
      SELECT coalesce(jsonb_agg(CASE
        WHEN one ->> 'playerId' = player::text
          THEN (one - 'agreed') || '{"notInGoal": false, "waitsAfterEachTurn": false, "mostTurns": null}'
        WHEN one #>> '{agreed,firstPartner}' = player::text THEN jsonb_set(one, '{agreed,firstPartner}', 'null')
        ELSE one END ORDER BY place), '[]')
      FROM jsonb_array_elements(plan -> 'players') WITH ORDINALITY AS of_plan (one, place)),
    'locks', (
      SELECT coalesce(jsonb_agg(one ORDER BY place) FILTER (WHERE one ->> 'playerId' <> player::text), '[]')
      FROM jsonb_array_elements(plan -> 'locks') WITH ORDINALITY AS of_plan (one, place)),
    'proof', (plan -> 'proof') || '{"sentence": "A plan of a practice that is over.", "bound": 0, "proven": false}')
    || coalesce((
      SELECT jsonb_object_agg(list, (
        SELECT coalesce(jsonb_agg(one ORDER BY place) FILTER (WHERE NOT one ? player::text), '[]')
        FROM jsonb_array_elements(plan -> list) WITH ORDINALITY AS of_list (one, place)))
      FROM unnest(ARRAY['apart', 'mayMeet', 'together']) AS list WHERE plan ? list), '{}')
$$;

-- Until when a child who is erased on a day was of the squad.
CREATE FUNCTION last_day_in(squad uuid, today date) RETURNS date LANGUAGE sql STABLE AS $$
  SELECT CASE WHEN EXISTS (
    SELECT FROM "Session" s
    WHERE s."clubId" = app_club() AND s."squadId" = squad AND s.day = today AND s.written <> 'notWritten'
  ) THEN today ELSE today - 1 END
$$;

-- Takes out of the club what names the child and all that is about it alone. To be called inside its club; false: that
-- was done before. Nobody can do it but by this function, and nothing undoes it.
CREATE FUNCTION erase_child(player uuid, of_cause "ErasureCause", at timestamptz, by_person uuid)
  RETURNS boolean LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
DECLARE
  club uuid := app_club();
  today date;
  done_before timestamptz;
  nameless text;
  number int;
  guests uuid[];
  guardians uuid[];
  logins uuid[];
BEGIN
  IF app_serves_guardian() THEN
    RAISE EXCEPTION 'A guardian asks for an erasure and does not make it.' USING ERRCODE = 'insufficient_privilege';
  END IF;
  -- One at a time in a club, so that no two get one name.
  PERFORM FROM "Club" WHERE id = club FOR UPDATE;
  SELECT p."erasedAt" INTO done_before FROM "Player" p WHERE p."clubId" = club AND p.id = player FOR UPDATE;
  IF NOT FOUND THEN
    RAISE EXCEPTION 'No player % stands in this club.', player USING ERRCODE = 'no_data_found';
  END IF;
  IF done_before IS NOT NULL THEN
    RETURN false;
  END IF;
  PERFORM set_config('app.erasing', 'yes', true);

  BEGIN
    SELECT coalesce(c."calendarDay", (at AT TIME ZONE c."timeZone")::date) INTO today FROM "Club" c WHERE c.id = club;
  EXCEPTION WHEN invalid_parameter_value THEN
    today := at::date;
  END;

  SELECT count(*) + 1 INTO number FROM "Erasure" e WHERE e."clubId" = club;
  LOOP
    nameless := 'Former player ' || number;
    EXIT WHEN NOT EXISTS (SELECT FROM "Player" p WHERE p."clubId" = club AND p.name = nameless);
    number := number + 1;
  END LOOP;
  SELECT array_agg(p.id) INTO guests FROM "Player" p WHERE p."clubId" = club AND p."joinedToId" = player;
  UPDATE "Player" p SET name = 'Guest' WHERE p."clubId" = club AND p."joinedToId" = player;
  UPDATE "Player" p SET name = nameless, code = NULL, "wantsToKeep" = false, "erasedAt" = at
    WHERE p."clubId" = club AND p.id = player;

  -- What was agreed, wished, noted and shown of this child alone
  UPDATE "Adjustment" a SET "partnerId" = NULL WHERE a."clubId" = club AND a."partnerId" = player;
  DELETE FROM "Adjustment" a WHERE a."clubId" = club AND a."playerId" = player;
  DELETE FROM "PlayerPair" p WHERE p."clubId" = club AND player IN (p."oneId", p."otherId");
  DELETE FROM "FlagState" f WHERE f."clubId" = club AND f."playerId" = player;
  DELETE FROM "FamilyPage" f WHERE f."clubId" = club AND f."playerId" = player;
  DELETE FROM "FamilyNote" f WHERE f."clubId" = club AND f."playerId" = player;
  DELETE FROM "Consent" c WHERE c."clubId" = club AND c."playerId" = player;
  DELETE FROM "OneTimeLink" l WHERE l."clubId" = club AND l."playerId" = player;
  UPDATE "ChildRequest" r SET text = '', answer = '', "askedById" = NULL,
      "extendedWhy" = CASE WHEN r."extendedTo" IS NULL THEN '' ELSE '-' END,
      outcome = coalesce(r.outcome, 'done'), "answeredAt" = coalesce(r."answeredAt", at),
      "answeredById" = CASE WHEN r.outcome IS NULL THEN by_person ELSE r."answeredById" END
    WHERE r."clubId" = club AND r."playerId" = player;

  -- Its days in squads end, with today where something of today is written down; what was written stays.
  DELETE FROM "SquadMembership" m WHERE m."clubId" = club AND m."playerId" = player AND m."firstDay" > last_day_in(m."squadId", today);
  UPDATE "SquadMembership" m SET "lastDay" = last_day_in(m."squadId", today)
    WHERE m."clubId" = club AND m."playerId" = player AND coalesce(m."lastDay", 'infinity') > last_day_in(m."squadId", today);

  -- Plans to come that count on it are made anew; those of practices held keep who was where.
  DELETE FROM "SessionPlan" p USING "Session" s
    WHERE p."clubId" = club AND s."clubId" = club AND s.id = p."sessionId" AND s.day >= today
      AND s.written = 'notWritten' AND position(player::text IN p.plan::text) > 0
      AND NOT EXISTS (SELECT FROM "PitchEvent" e WHERE e."clubId" = club AND e."sessionId" = s.id);
  UPDATE "SessionPlan" p SET plan = plan_without(p.plan, player)
    WHERE p."clubId" = club AND position(player::text IN p.plan::text) > 0;
  UPDATE "PitchEvent" e SET deed = jsonb_set(e.deed, '{sentence}', '""')
    WHERE e."clubId" = club AND e.deed ->> 'kind' = 'replan' AND position(player::text IN e.deed::text) > 0;
  UPDATE "PitchEvent" e SET deed = jsonb_set(e.deed, '{name}', '"Guest"')
    WHERE e."clubId" = club AND e.deed ->> 'kind' = 'guest' AND e.deed ->> 'name' NOT IN ('', 'Guest')
      AND (e.deed ->> 'playerId' = player::text OR (e.deed ->> 'playerId')::uuid = ANY (guests));

  -- Guardians of no other child, who are nothing else in the club, go with it.
  WITH gone AS (
    DELETE FROM "Guardianship" g WHERE g."clubId" = club AND g."playerId" = player RETURNING g."personId"
  )
  SELECT array_agg(p.id) INTO guardians FROM gone JOIN "Person" p ON p."clubId" = club AND p.id = gone."personId"
  WHERE p.role = 'guardian' AND NOT EXISTS (
    SELECT FROM "Guardianship" g WHERE g."clubId" = club AND g."personId" = p.id AND g."playerId" <> player);
  DELETE FROM "OneTimeLink" l WHERE l."clubId" = club AND l."personId" = ANY (guardians);
  SELECT array_agg(p."loginId") INTO logins FROM "Person" p
    WHERE p."clubId" = club AND p.id = ANY (guardians) AND p."loginId" IS NOT NULL;
  UPDATE "Person" p SET name = 'Former guardian', email = NULL, "loginId" = NULL,
      "accessEndedAt" = coalesce(p."accessEndedAt", at)
    WHERE p."clubId" = club AND p.id = ANY (guardians);
  -- A sign-in that another club knows stays. One person of several clubs is seen here: the owner may look.
  DELETE FROM "LoginProof" f USING "Login" l WHERE l.id = ANY (logins)
    AND NOT EXISTS (SELECT FROM "Person" p WHERE p."loginId" = l.id)
    AND (position(l.email IN f.identifier) > 0 OR position(l.id::text IN f.identifier || f.value) > 0);
  DELETE FROM "Login" l WHERE l.id = ANY (logins) AND NOT EXISTS (SELECT FROM "Person" p WHERE p."loginId" = l.id);

  INSERT INTO "Erasure" ("clubId", "playerId", cause, "erasedAt", "erasedById") VALUES (club, player, of_cause, at, by_person)
    ON CONFLICT DO NOTHING;
  PERFORM set_config('app.erasing', '', true);
  RETURN true;
END $$;

REVOKE EXECUTE ON FUNCTION erase_child(uuid, "ErasureCause", timestamptz, uuid) FROM PUBLIC;

-- What was tapped is never changed, but for the words in it about a child who is erased. Only the owner could do it anyway.
DROP TRIGGER stays_written ON "PitchEvent";
CREATE TRIGGER stays_written BEFORE UPDATE ON "PitchEvent" FOR EACH STATEMENT
  WHEN (current_setting('app.erasing', true) IS DISTINCT FROM 'yes') EXECUTE FUNCTION refuse_change();
CREATE TRIGGER never_removed BEFORE DELETE OR TRUNCATE ON "PitchEvent"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- An erased child gets no name, and nothing new is written about it.
CREATE FUNCTION keep_erased() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  written jsonb := to_jsonb(NEW);
  one text;
  erased timestamptz;
BEGIN
  FOREACH one IN ARRAY TG_ARGV LOOP
    -- Waits for an erasure that is going on.
    SELECT p."erasedAt" INTO erased FROM "Player" p
      WHERE p."clubId" = NEW."clubId" AND p.id = (written ->> one)::uuid FOR KEY SHARE;
    IF erased IS NOT NULL THEN
      RAISE EXCEPTION 'Player % was erased on %, and nothing is written about it any more.', written ->> one, erased::date
        USING ERRCODE = 'restrict_violation', CONSTRAINT = 'Player_erased';
    END IF;
  END LOOP;
  RETURN NEW;
END $$;
CREATE FUNCTION keep_erased_nameless() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'Player % was erased and stays without a name.', OLD.id
    USING ERRCODE = 'restrict_violation', CONSTRAINT = 'Player_erased';
END $$;
CREATE TRIGGER stays_erased BEFORE UPDATE ON "Player" FOR EACH ROW WHEN (OLD."erasedAt" IS NOT NULL
    AND (NEW."erasedAt", NEW.name, NEW.code, NEW."wantsToKeep") IS DISTINCT FROM (OLD."erasedAt", OLD.name, NULL, false))
  EXECUTE FUNCTION keep_erased_nameless();
CREATE TRIGGER not_of_erased BEFORE INSERT ON "PlayerPair"
  FOR EACH ROW EXECUTE FUNCTION keep_erased('oneId', 'otherId');
DO $$
DECLARE
  about_child text;
BEGIN
  FOREACH about_child IN ARRAY ARRAY['Guardianship', 'Adjustment', 'FlagState', 'FamilyPage', 'FamilyNote', 'Consent'] LOOP
    EXECUTE format('CREATE TRIGGER not_of_erased BEFORE INSERT ON %I FOR EACH ROW EXECUTE FUNCTION keep_erased(''playerId'')', about_child);
  END LOOP;
END $$;
CREATE TRIGGER not_of_erased BEFORE INSERT ON "OneTimeLink" FOR EACH ROW WHEN (NEW."playerId" IS NOT NULL)
  EXECUTE FUNCTION keep_erased('playerId');
CREATE TRIGGER not_of_erased BEFORE INSERT ON "ChildRequest" FOR EACH ROW WHEN (NEW.outcome IS NULL)
  EXECUTE FUNCTION keep_erased('playerId');

-- Demo families have claimed their page.
DO $$
DECLARE
  club uuid;
BEGIN
  FOR club IN SELECT id FROM "Club" LOOP
    PERFORM set_config('app.club_id', club::text, true);
    UPDATE "Guardianship" SET "claimedAt" = now();
  END LOOP;
  PERFORM set_config('app.club_id', '', true);
END $$;

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
  EXECUTE format('GRANT EXECUTE ON FUNCTION list_demo_people(), list_people_of_login(uuid), what_stands_here(), newest_migration(),
    found_club(text, text, text, uuid, text, uuid), erase_child(uuid, "ErasureCause", timestamptz, uuid) TO %I', app_role);

  FOR item IN SELECT * FROM (VALUES
    ('Club', 'SELECT, UPDATE (name, "timeZone", locale, "retentionMonths", "askWhom", holidays)'),
    ('Person', 'SELECT, INSERT, UPDATE (name, role, email, "loginId", "accessEndedAt")'),
    ('Season', 'SELECT, INSERT, UPDATE (name, "firstDay", "lastDay")'),
    ('Term', 'SELECT, INSERT, UPDATE (name, "firstDay", "lastDay")'),
    ('Squad', 'SELECT, INSERT, UPDATE (name, "ageLimit", "showsComing")'),
    ('SquadCoach', 'SELECT, INSERT, UPDATE ("lastDay")'),
    ('Player', 'SELECT, INSERT, UPDATE (name, keeps, "wantsToKeep", "joinedToId")'),
    ('KeepsChange', 'SELECT, INSERT'),
    ('Guardianship', 'SELECT, INSERT, UPDATE ("claimedAt", "withholdsComing"), DELETE'),
    ('SquadMembership', 'SELECT, INSERT, UPDATE ("firstDay", "lastDay")'),
    ('Adjustment', 'SELECT, INSERT, UPDATE ("lastDay", "partnerId")'),
    ('Theme', 'SELECT, INSERT, UPDATE (name, "parentId", "order", asks)'),
    ('ProgrammeEntry', 'SELECT, INSERT, UPDATE ("wishedShare"), DELETE'),
    ('PracticeDesign', 'SELECT, INSERT, UPDATE (name, "themeId", "areaLengthM", "areaWidthM", "areaUnit",
      "isMirrored", "hasHeading", rounds, sides, adaptations, note, "archivedAt")'),
    ('Session', 'SELECT, INSERT, UPDATE (day, title, "startsAt", "lengthSeconds", periods, "designId", written,
      "writtenById", "writtenAt", "ledById", "cancelledAt", place)'),
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
    ('AuditEntry', 'SELECT, INSERT'),
    ('OneTimeLink', 'SELECT, INSERT, UPDATE ("usedAt", "revokedAt")'),
    ('FamilyPage', 'SELECT, INSERT'),
    ('FamilyNote', 'SELECT, INSERT, UPDATE (text, "writtenById", "writtenAt"), DELETE'),
    ('ChildRequest', 'SELECT, INSERT, UPDATE ("extendedTo", "extendedWhy", outcome, answer, "answeredById", "answeredAt")'),
    ('Consent', 'SELECT, INSERT, UPDATE ("withdrawnOn")'),
    ('Erasure', 'SELECT'),
    ('Login', 'SELECT, INSERT, UPDATE (email, "emailVerified", name, image, "updatedAt"), DELETE'),
    ('LoginSession', 'SELECT, INSERT, UPDATE (token, "expiresAt", "ipAddress", "userAgent", "clubId", "personId", "updatedAt"), DELETE'),
    ('LoginMethod', 'SELECT, INSERT, UPDATE (password, "updatedAt"), DELETE'),
    ('LoginProof', 'SELECT, INSERT, UPDATE (value, "expiresAt", "updatedAt"), DELETE'),
    ('Passkey', 'SELECT, INSERT, UPDATE (counter, "isBackedUp", name, "lastUsedAt"), DELETE'),
    ('RateLimit', 'SELECT, INSERT, UPDATE, DELETE')
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
