-- The weeks ahead: a programme's rules, days without practice, grounds, players who will be away, the plan of a term, calendars read
-- by secret. And one plan a session: what stood in "MatchPlan" moves to "SessionPlan".
ALTER TABLE "Theme" ADD COLUMN     "focus" JSONB NOT NULL DEFAULT '{}';

ALTER TABLE "ProgrammeEntry" ADD COLUMN     "afterThemeId" UUID,
ADD COLUMN     "firstWeek" INTEGER,
ADD COLUMN     "lastWeek" INTEGER,
ADD COLUMN     "leastWeeksBetween" INTEGER,
ADD COLUMN     "mostWeeksBetween" INTEGER;

ALTER TABLE "Session" ADD COLUMN     "revisedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
ADD COLUMN     "revision" INTEGER NOT NULL DEFAULT 0,
ADD COLUMN     "themeId" UUID;

CREATE TABLE "ProgrammeBlock" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "squadId" UUID NOT NULL,
    "termId" UUID NOT NULL,
    "themeId" UUID NOT NULL,
    "firstWeek" INTEGER NOT NULL,
    "lastWeek" INTEGER NOT NULL,

    CONSTRAINT "ProgrammeBlock_pkey" PRIMARY KEY ("clubId","id")
);

CREATE TABLE "ThemeDesign" (
    "clubId" UUID NOT NULL,
    "themeId" UUID NOT NULL,
    "designId" UUID NOT NULL,

    CONSTRAINT "ThemeDesign_pkey" PRIMARY KEY ("clubId","themeId","designId")
);

CREATE TABLE "ClosedDays" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "squadId" UUID,
    "firstDay" DATE NOT NULL,
    "lastDay" DATE NOT NULL,
    "name" TEXT NOT NULL,

    CONSTRAINT "ClosedDays_pkey" PRIMARY KEY ("clubId","id")
);

CREATE TABLE "GroundSize" (
    "clubId" UUID NOT NULL,
    "place" TEXT NOT NULL,
    "lengthM" DOUBLE PRECISION NOT NULL,
    "widthM" DOUBLE PRECISION NOT NULL,

    CONSTRAINT "GroundSize_pkey" PRIMARY KEY ("clubId","place")
);

CREATE TABLE "PlayerAway" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "firstDay" DATE NOT NULL,
    "lastDay" DATE NOT NULL,

    CONSTRAINT "PlayerAway_pkey" PRIMARY KEY ("clubId","id")
);

CREATE TABLE "TermPlan" (
    "clubId" UUID NOT NULL,
    "squadId" UUID NOT NULL,
    "termId" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "plan" JSONB NOT NULL,
    "madeById" UUID,
    "madeAt" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "TermPlan_pkey" PRIMARY KEY ("clubId","squadId","termId")
);

CREATE TABLE "CalendarFeed" (
    "clubId" UUID NOT NULL,
    "id" UUID NOT NULL,
    "personId" UUID NOT NULL,
    "secretHash" TEXT NOT NULL,
    "squadIds" UUID[],
    "madeAt" TIMESTAMPTZ(3) NOT NULL,
    "revokedAt" TIMESTAMPTZ(3),
    "lastReadOn" DATE,

    CONSTRAINT "CalendarFeed_pkey" PRIMARY KEY ("clubId","id")
);

CREATE INDEX "ProgrammeBlock_clubId_squadId_termId_idx" ON "ProgrammeBlock"("clubId", "squadId", "termId");

CREATE INDEX "PlayerAway_clubId_playerId_idx" ON "PlayerAway"("clubId", "playerId");

CREATE INDEX "CalendarFeed_clubId_personId_idx" ON "CalendarFeed"("clubId", "personId");

ALTER TABLE "ProgrammeEntry" ADD CONSTRAINT "ProgrammeEntry_clubId_afterThemeId_fkey" FOREIGN KEY ("clubId", "afterThemeId") REFERENCES "Theme"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "Session" ADD CONSTRAINT "Session_clubId_themeId_fkey" FOREIGN KEY ("clubId", "themeId") REFERENCES "Theme"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "ProgrammeBlock" ADD CONSTRAINT "ProgrammeBlock_clubId_squadId_fkey" FOREIGN KEY ("clubId", "squadId") REFERENCES "Squad"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "ProgrammeBlock" ADD CONSTRAINT "ProgrammeBlock_clubId_termId_fkey" FOREIGN KEY ("clubId", "termId") REFERENCES "Term"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "ProgrammeBlock" ADD CONSTRAINT "ProgrammeBlock_clubId_themeId_fkey" FOREIGN KEY ("clubId", "themeId") REFERENCES "Theme"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "ThemeDesign" ADD CONSTRAINT "ThemeDesign_clubId_themeId_fkey" FOREIGN KEY ("clubId", "themeId") REFERENCES "Theme"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "ThemeDesign" ADD CONSTRAINT "ThemeDesign_clubId_designId_fkey" FOREIGN KEY ("clubId", "designId") REFERENCES "PracticeDesign"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "ClosedDays" ADD CONSTRAINT "ClosedDays_clubId_fkey" FOREIGN KEY ("clubId") REFERENCES "Club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "ClosedDays" ADD CONSTRAINT "ClosedDays_clubId_squadId_fkey" FOREIGN KEY ("clubId", "squadId") REFERENCES "Squad"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "GroundSize" ADD CONSTRAINT "GroundSize_clubId_fkey" FOREIGN KEY ("clubId") REFERENCES "Club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "PlayerAway" ADD CONSTRAINT "PlayerAway_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "TermPlan" ADD CONSTRAINT "TermPlan_clubId_squadId_fkey" FOREIGN KEY ("clubId", "squadId") REFERENCES "Squad"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "TermPlan" ADD CONSTRAINT "TermPlan_clubId_termId_fkey" FOREIGN KEY ("clubId", "termId") REFERENCES "Term"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "TermPlan" ADD CONSTRAINT "TermPlan_clubId_madeById_fkey" FOREIGN KEY ("clubId", "madeById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "CalendarFeed" ADD CONSTRAINT "CalendarFeed_clubId_personId_fkey" FOREIGN KEY ("clubId", "personId") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What Prisma cannot say.
ALTER TABLE "Theme" ADD CONSTRAINT "Theme_focus_check" CHECK (jsonb_typeof(focus) = 'object' AND octet_length(focus::text) <= 1024);
ALTER TABLE "ProgrammeEntry"
  ADD CONSTRAINT "ProgrammeEntry_weeks_check" CHECK ("firstWeek" >= 1 AND "lastWeek" BETWEEN 1 AND 60 AND "firstWeek" <= coalesce("lastWeek", 60)),
  ADD CONSTRAINT "ProgrammeEntry_between_check" CHECK ("leastWeeksBetween" BETWEEN 1 AND 60 AND "mostWeeksBetween" BETWEEN 1 AND 60
    AND "leastWeeksBetween" <= coalesce("mostWeeksBetween", 60)),
  ADD CONSTRAINT "ProgrammeEntry_after_check" CHECK ("afterThemeId" <> "themeId");
ALTER TABLE "ProgrammeBlock" ADD CONSTRAINT "ProgrammeBlock_weeks_check" CHECK ("firstWeek" >= 1 AND "lastWeek" BETWEEN "firstWeek" AND 60);
ALTER TABLE "ClosedDays" ADD CONSTRAINT "ClosedDays_days_check" CHECK ("firstDay" <= "lastDay"),
  ADD CONSTRAINT "ClosedDays_name_check" CHECK (char_length(name) BETWEEN 1 AND 80);
ALTER TABLE "GroundSize" ADD CONSTRAINT "GroundSize_text_check" CHECK (char_length(place) BETWEEN 1 AND 120),
  ADD CONSTRAINT "GroundSize_size_check" CHECK ("lengthM" > 0 AND "lengthM" <= 200 AND "widthM" > 0 AND "widthM" <= 200);
ALTER TABLE "PlayerAway" ADD CONSTRAINT "PlayerAway_days_check" CHECK ("firstDay" <= "lastDay");
ALTER TABLE "TermPlan"
  ADD CONSTRAINT "TermPlan_version_check" CHECK (version >= 1),
  ADD CONSTRAINT "TermPlan_plan_check" CHECK (jsonb_typeof(plan) = 'object' AND octet_length(plan::text) <= 262144);
ALTER TABLE "CalendarFeed" ADD CONSTRAINT "CalendarFeed_hash_check" CHECK ("secretHash" ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT "CalendarFeed_squads_check" CHECK (cardinality("squadIds") <= 100);
ALTER TABLE "Session" ADD CONSTRAINT "Session_revision_check" CHECK (revision >= 0);

-- Whoever changes what calendars show of a session, they hear of it (RFC 5545, SEQUENCE and LAST-MODIFIED).
CREATE FUNCTION count_revision() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW.revision := OLD.revision + 1;
  NEW."revisedAt" := now();
  RETURN NEW;
END $$;
CREATE TRIGGER revised BEFORE UPDATE ON "Session" FOR EACH ROW
  WHEN ((OLD.day, OLD.title, OLD."startsAt", OLD.place, OLD."lengthSeconds", OLD.periods, OLD."designId", OLD."themeId", OLD."cancelledAt")
    IS DISTINCT FROM
    (NEW.day, NEW.title, NEW."startsAt", NEW.place, NEW."lengthSeconds", NEW.periods, NEW."designId", NEW."themeId", NEW."cancelledAt"))
  EXECUTE FUNCTION count_revision();

SELECT guard_by_club(name::regclass) FROM unnest(ARRAY['"ProgrammeBlock"', '"ThemeDesign"', '"ClosedDays"', '"GroundSize"',
  '"PlayerAway"', '"TermPlan"', '"CalendarFeed"']) AS name;
SELECT hold_guardians(name, 'NOT (SELECT app_serves_guardian())', 'NOT (SELECT app_serves_guardian())')
  FROM unnest(ARRAY['"ProgrammeBlock"', '"ThemeDesign"', '"ClosedDays"', '"GroundSize"', '"TermPlan"']) AS name;
SELECT hold_guardians('"PlayerAway"', 'coalesce("playerId" = ANY ((SELECT app_children())::uuid[]), NOT (SELECT app_serves_guardian()))',
  'NOT (SELECT app_serves_guardian())');
SELECT hold_guardians('"CalendarFeed"', 'coalesce("personId" = (SELECT app_guardian()), NOT (SELECT app_serves_guardian()))',
  'coalesce("personId" = (SELECT app_guardian()), NOT (SELECT app_serves_guardian()))');
CREATE TRIGGER not_of_erased BEFORE INSERT ON "PlayerAway" FOR EACH ROW EXECUTE FUNCTION keep_erased('playerId');

-- One plan a session. Line-ups that stand move over, of every club: for that the owner's own guard is lifted.
ALTER TABLE "MatchPlan" NO FORCE ROW LEVEL SECURITY;
ALTER TABLE "SessionPlan" NO FORCE ROW LEVEL SECURITY;
INSERT INTO "SessionPlan" ("clubId", "sessionId", version, plan, "madeById", "madeAt", "forgottenAt")
  SELECT "clubId", "sessionId", version, plan, "madeById", "madeAt", "forgottenAt" FROM "MatchPlan";
ALTER TABLE "SessionPlan" FORCE ROW LEVEL SECURITY;
DROP TABLE "MatchPlan";

CREATE OR REPLACE FUNCTION match_plan_without(plan jsonb, player uuid) RETURNS jsonb LANGUAGE sql IMMUTABLE AS $$
  SELECT plan || jsonb_build_object(
    'players', (
      SELECT coalesce(jsonb_agg(CASE WHEN one ->> 'playerId' = player::text THEN one || '{
          "owed": {"playSeconds": 0, "keepSeconds": 0, "starts": 0},
          "wishes": {"back": "open", "middle": "open", "forward": "open"},
          "metSeconds": {"back": 0, "middle": 0, "forward": 0},
          "playedToday": 0}' ELSE one END ORDER BY place), '[]')
      FROM jsonb_array_elements(plan -> 'players') WITH ORDINALITY AS of_plan (one, place)),
    'locks', (
      SELECT coalesce(jsonb_agg(one ORDER BY place) FILTER (WHERE one ->> 'playerId' <> player::text), '[]')
      FROM jsonb_array_elements(plan -> 'locks') WITH ORDINALITY AS of_plan (one, place)),
    'proof', (plan -> 'proof') || '{"sentence": "A plan of a match that is over."}')
    || coalesce((
      SELECT jsonb_object_agg(list, (
        SELECT coalesce(jsonb_agg(one ORDER BY place) FILTER (WHERE NOT one ? player::text), '[]')
        FROM jsonb_array_elements(plan -> list) WITH ORDINALITY AS of_list (one, place)))
      FROM unnest(ARRAY['apart', 'mayMeet', 'together']) AS list WHERE plan ? list), '{}')
$$;

-- As before, with the days a child will be away and calendars of guardians who go; a session has one plan.
CREATE OR REPLACE FUNCTION erase_child(player uuid, of_cause "ErasureCause", at timestamptz, by_person uuid)
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
  DELETE FROM "LineWish" w WHERE w."clubId" = club AND w."playerId" = player;
  DELETE FROM "PlayerAway" a WHERE a."clubId" = club AND a."playerId" = player;
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
  UPDATE "SessionPlan" p
    SET plan = CASE s.kind WHEN 'match' THEN match_plan_without(p.plan, player) ELSE plan_without(p.plan, player) END
    FROM "Session" s
    WHERE p."clubId" = club AND s."clubId" = club AND s.id = p."sessionId" AND position(player::text IN p.plan::text) > 0;
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
  DELETE FROM "CalendarFeed" f WHERE f."clubId" = club AND f."personId" = ANY (guardians);
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
    ('Club', 'SELECT, UPDATE (name, "timeZone", locale, "retentionMonths", "askWhom", holidays, "countsGoals")'),
    ('Person', 'SELECT, INSERT, UPDATE (name, role, email, "loginId", "accessEndedAt")'),
    ('Season', 'SELECT, INSERT, UPDATE (name, "firstDay", "lastDay")'),
    ('Term', 'SELECT, INSERT, UPDATE (name, "firstDay", "lastDay")'),
    ('Squad', 'SELECT, INSERT, UPDATE (name, "ageLimit", "showsComing", "matchFormatId")'),
    ('SquadCoach', 'SELECT, INSERT, UPDATE ("lastDay")'),
    ('Player', 'SELECT, INSERT, UPDATE (name, keeps, "wantsToKeep", "joinedToId")'),
    ('KeepsChange', 'SELECT, INSERT'),
    ('Guardianship', 'SELECT, INSERT, UPDATE ("claimedAt", "withholdsComing"), DELETE'),
    ('SquadMembership', 'SELECT, INSERT, UPDATE ("firstDay", "lastDay")'),
    ('Adjustment', 'SELECT, INSERT, UPDATE ("lastDay", "partnerId")'),
    ('Theme', 'SELECT, INSERT, UPDATE (name, "parentId", "order", asks, focus)'),
    ('ProgrammeEntry', 'SELECT, INSERT, UPDATE ("wishedShare", "firstWeek", "lastWeek", "afterThemeId", "leastWeeksBetween",
      "mostWeeksBetween"), DELETE'),
    ('ProgrammeBlock', 'SELECT, INSERT, DELETE'),
    ('ThemeDesign', 'SELECT, INSERT, DELETE'),
    ('ClosedDays', 'SELECT, INSERT, DELETE'),
    ('GroundSize', 'SELECT, INSERT, UPDATE ("lengthM", "widthM"), DELETE'),
    ('PlayerAway', 'SELECT, INSERT, UPDATE ("firstDay", "lastDay"), DELETE'),
    ('TermPlan', 'SELECT, INSERT, UPDATE (version, plan, "madeById", "madeAt")'),
    ('CalendarFeed', 'SELECT, INSERT, UPDATE ("revokedAt", "lastReadOn"), DELETE'),
    ('PracticeDesign', 'SELECT, INSERT, UPDATE (name, "themeId", "areaLengthM", "areaWidthM", "areaUnit",
      "isMirrored", "hasHeading", rounds, sides, adaptations, note, "archivedAt")'),
    ('Session', 'SELECT, INSERT, UPDATE (day, title, "startsAt", "lengthSeconds", periods, "designId", written,
      "writtenById", "writtenAt", "ledById", "cancelledAt", place, "ourGoals", "theirGoals", "themeId")'),
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
    ('MatchFormat', 'SELECT, INSERT, UPDATE (name, definition, "archivedAt")'),
    ('LineWish', 'SELECT, INSERT, UPDATE (wish), DELETE'),
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
