import type { Knex } from 'knex';

interface Migration {
  name: string;
  up(knex: Knex): Promise<void>;
}

/** Forward only, numbered; text columns so that SQLite and Postgres agree. */
const MIGRATIONS: readonly Migration[] = [
  {
    name: '001-jobs-notes-entries',
    async up(knex) {
      await knex.schema.createTable('job', (t) => {
        t.text('id').primary();
        t.text('name').notNullable();
        t.text('zone').notNullable();
        t.text('start').notNullable();
        t.text('areas').notNullable();
        t.integer('built_year');
        t.text('mail_to').notNullable();
        t.text('mail_at').notNullable();
      });
      await knex.schema.createTable('note', (t) => {
        t.text('id').primary();
        t.text('job_id').notNullable().references('job.id');
        t.text('said_at').notNullable();
        t.text('stored_at').notNullable();
        t.text('by');
        t.text('text').notNullable();
        t.text('state').notNullable();
        t.text('reply');
        t.index(['job_id', 'said_at']);
      });
      await knex.schema.createTable('entry', (t) => {
        t.text('id').primary();
        t.text('job_id').notNullable().references('job.id');
        t.text('note_id').references('note.id');
        t.text('at').notNullable();
        t.text('by');
        t.text('source');
        t.text('what').notNullable();
        t.index(['job_id', 'at']);
      });
      await knex.schema.createTable('mail', (t) => {
        t.text('id').primary();
        t.text('job_id').notNullable().references('job.id');
        t.text('day').notNullable();
        t.text('recipients').notNullable();
        t.text('message_id').notNullable().unique();
        t.text('subject').notNullable();
        t.text('html').notNullable();
        t.text('text').notNullable();
        t.text('state').notNullable();
        t.integer('attempts').notNullable();
        t.text('next_at').notNullable();
        t.text('sent_as');
        t.text('failure');
        t.unique(['job_id', 'day', 'recipients']);
      });
    },
  },
  {
    name: '002-enclosures',
    async up(knex) {
      await knex.schema.alterTable('note', (t) => {
        t.text('recording_id');
        t.text('photo_ids').notNullable().defaultTo('[]');
      });
    },
  },
  {
    name: '003-areas-crew-words',
    async up(knex) {
      await knex.schema.alterTable('note', (t) => {
        t.text('area');
      });
      await knex.schema.alterTable('job', (t) => {
        t.text('crew').notNullable().defaultTo('[]');
      });
      await knex.schema.createTable('word', (t) => {
        t.text('id').primary();
        t.text('term').notNullable();
      });
    },
  },
  {
    name: '004-catalogue',
    async up(knex) {
      await knex.schema.createTable('catalogue', (t) => {
        t.text('id').primary();
        t.text('text').notNullable();
        t.text('kept_at').notNullable();
      });
    },
  },
  {
    // A day told again in other words is a mail of its own; the id, made of what is in it, keeps each one single.
    name: '005-mail-of-other-words',
    async up(knex) {
      await knex.schema.alterTable('mail', (t) => t.dropUnique(['job_id', 'day', 'recipients']));
    },
  },
];

/** Hands the list to knex; nothing is read from disk, so a bundled server migrates too. */
export const migrationSource: Knex.MigrationSource<Migration> = {
  getMigrations: async () => [...MIGRATIONS],
  getMigrationName: (migration) => migration.name,
  getMigration: async (migration) => ({ up: migration.up, down: async () => undefined }),
};
