/** How does SQLite read a statement once that comes again and again, and run one of them for many rows? */
import type SQLite from 'better-sqlite3';
import type { SqliteDatabase, SqliteStatement } from 'kysely';

/** Statements kept at most; the hub has some sixty. Beyond it the one used longest ago is forgotten. */
const MOST_STATEMENTS = 200;

/** The values of a statement, or a list of them: then it runs once for each. */
type Values = readonly unknown[] | readonly (readonly unknown[])[];

const isMany = (values: Values): values is readonly (readonly unknown[])[] =>
  Array.isArray(values[0]);

/** The database as Kysely uses it, with its statements kept. */
export const preparing = (sqlite: SQLite.Database): SqliteDatabase => {
  const kept = new Map<string, SqliteStatement>();
  const prepared = (text: string): SqliteStatement => {
    const statement = sqlite.prepare(text);
    return {
      reader: statement.reader,
      all: (values) => statement.all(values),
      iterate: (values) => statement.iterate(values),
      run(values: Values) {
        // A full disk ends a transaction by itself; undoing it once more would hide why.
        if (text === 'rollback' && !sqlite.inTransaction) return { changes: 0, lastInsertRowid: 0 };
        if (!isMany(values)) return statement.run(values);
        let changes = 0;
        for (const row of values) changes += statement.run(row).changes;
        return { changes, lastInsertRowid: 0 };
      },
    };
  };
  return {
    close: () => sqlite.close(),
    prepare(text) {
      const statement = kept.get(text) ?? prepared(text);
      // Moved to the end: the first of the map is the one used longest ago.
      kept.delete(text);
      kept.set(text, statement);
      if (kept.size > MOST_STATEMENTS) kept.delete(kept.keys().next().value as string);
      return statement;
    },
  };
};
