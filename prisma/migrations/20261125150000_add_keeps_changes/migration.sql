-- Who may be put in goal gets a day: a child who asks not to keep from March on changes nothing that was due in autumn.
-- Nothing is filled in: a player without a change stands, on every day, as "Player".keeps says.

CREATE TABLE "KeepsChange" (
    "clubId" UUID NOT NULL,
    "playerId" UUID NOT NULL,
    "seq" INTEGER NOT NULL,
    "day" DATE NOT NULL,
    "keeps" BOOLEAN NOT NULL,
    "recordedById" UUID,
    "recordedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "KeepsChange_pkey" PRIMARY KEY ("clubId","playerId","seq")
);

-- AddForeignKey
ALTER TABLE "KeepsChange" ADD CONSTRAINT "KeepsChange_clubId_playerId_fkey" FOREIGN KEY ("clubId", "playerId") REFERENCES "Player"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "KeepsChange" ADD CONSTRAINT "KeepsChange_clubId_recordedById_fkey" FOREIGN KEY ("clubId", "recordedById") REFERENCES "Person"("clubId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;


-- Written by hand from here on.

ALTER TABLE "KeepsChange"
  ADD CONSTRAINT "KeepsChange_seq_check" CHECK (seq >= 1);

-- What held before the first change is read off as its opposite, so every change must say otherwise than what held.
CREATE FUNCTION check_keeps_change() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  held boolean;
BEGIN
  held := coalesce(
    (SELECT c.keeps FROM "KeepsChange" c
     WHERE c."clubId" = NEW."clubId" AND c."playerId" = NEW."playerId" AND c.day <= NEW.day
     ORDER BY c.day DESC, c.seq DESC LIMIT 1),
    (SELECT NOT c.keeps FROM "KeepsChange" c
     WHERE c."clubId" = NEW."clubId" AND c."playerId" = NEW."playerId"
     ORDER BY c.day, c.seq LIMIT 1),
    (SELECT p.keeps FROM "Player" p WHERE p."clubId" = NEW."clubId" AND p.id = NEW."playerId"));
  IF held = NEW.keeps THEN
    RAISE EXCEPTION 'That is what holds of player % on % already.', NEW."playerId", NEW.day
      USING ERRCODE = 'check_violation', CONSTRAINT = 'KeepsChange_changes';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER says_otherwise BEFORE INSERT ON "KeepsChange"
  FOR EACH ROW EXECUTE FUNCTION check_keeps_change();

CREATE TRIGGER stays_written BEFORE UPDATE OR DELETE OR TRUNCATE ON "KeepsChange"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

SELECT guard_by_club('"KeepsChange"');

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
    ('Player', 'SELECT, INSERT, UPDATE (name, keeps, "wantsToKeep")'),
    ('KeepsChange', 'SELECT, INSERT'),
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

DO $$
BEGIN
  IF EXISTS (SELECT FROM pg_roles WHERE rolname = 'turnbook_app') THEN
    PERFORM grant_app_rights('turnbook_app');
  END IF;
END $$;
