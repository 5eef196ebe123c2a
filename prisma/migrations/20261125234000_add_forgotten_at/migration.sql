-- When a plan forgot what was set for its day alone, and what was agreed; null: it has not, or was saved again since.
ALTER TABLE "SessionPlan" ADD COLUMN "forgottenAt" TIMESTAMPTZ(3);

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
