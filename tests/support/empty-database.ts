import { ownerDatabase } from './test-club'

/** Takes every club and sign-in away; what is otherwise never removed goes too. For tests of an empty database. */
export async function emptyDatabase(): Promise<void> {
  await ownerDatabase().$executeRawUnsafe(`do $$
    declare one regclass;
    begin
      for one in select c.oid from pg_class c where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' loop
        execute format('alter table %s disable trigger user', one);
      end loop;
      truncate "Club", "Login", "RateLimit" cascade;
      for one in select c.oid from pg_class c where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' loop
        execute format('alter table %s enable trigger user', one);
      end loop;
    end $$`)
}
