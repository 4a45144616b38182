-- Roles for an archive on a PostgreSQL server: who may read, who may add records, who may release windows. To be run by
-- the owner of the archive's tables once the archive was made (any `ovenwright archive` command that writes makes it);
-- a newer version that brings it forward runs this again by itself:
--   psql -v ON_ERROR_STOP=1 -f roles.sql "postgresql://owner@host/database"
-- Then give people and stations a role of their own, for instance:
--   create role line2 login password null in role ovenwright_add;
-- Passwords belong into the server library's password file (~/.pgpass) of each station, never into a URL or a command.
do $$
declare
  name text;
begin
  foreach name in array array['ovenwright_read', 'ovenwright_add', 'ovenwright_release'] loop
    if not exists (select from pg_roles where rolname = name) then
      execute format('create role %I nologin', name);
    end if;
  end loop;
end $$;

revoke all on schema ovenwright from public;
revoke all on all tables in schema ovenwright from public, ovenwright_read, ovenwright_add, ovenwright_release;

grant usage on schema ovenwright to ovenwright_read;
grant select on all tables in schema ovenwright to ovenwright_read;

-- Records are added and never changed: no update and no delete, but of where a chain ends.
grant ovenwright_read to ovenwright_add;
grant insert on ovenwright.content, ovenwright.chain, ovenwright.record, ovenwright.run, ovenwright.search, ovenwright.note,
  ovenwright.superseded, ovenwright.repeated to ovenwright_add;
grant update (count, head, moved) on ovenwright.chain to ovenwright_add;

grant ovenwright_read to ovenwright_release;
grant insert on ovenwright.content, ovenwright.released_window to ovenwright_release;
