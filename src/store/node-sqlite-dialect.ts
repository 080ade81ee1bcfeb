/** @module Kysely on the SQLite that is in Node: one connection, waiting for other programs without holding this one up. */
import type { DatabaseSync, SQLInputValue, StatementSync } from 'node:sqlite';
import { setTimeout as wait } from 'node:timers/promises';
import {
  type CompiledQuery,
  type DatabaseConnection,
  type Dialect,
  type Driver,
  type QueryResult,
  SqliteAdapter,
  SqliteIntrospector,
  SqliteQueryCompiler,
} from 'kysely';
import { inWords, isBusy } from './sqlite-trouble.ts';

export interface NodeSqlite {
  readonly database: DatabaseSync;
  /** For messages. */
  readonly path: string;
  /** How long to wait for another program, milliseconds. */
  readonly patience: number;
}

/** SQLite rolls back what creates tables as well; with it, two programs that open a new store make it once. */
class Adapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

/** Statements are kept: compiling one costs as much as running it. There are a few dozen, all written in this folder. */
const mostStatements = 200;

class Connection implements DatabaseConnection {
  readonly #sqlite: NodeSqlite;
  readonly #statements = new Map<string, StatementSync>();

  constructor(sqlite: NodeSqlite) {
    this.#sqlite = sqlite;
  }

  #statement(sql: string): StatementSync {
    const kept = this.#statements.get(sql);
    if (kept !== undefined) return kept;
    if (this.#statements.size >= mostStatements) this.#statements.clear();
    const statement = this.#sqlite.database.prepare(sql);
    this.#statements.set(sql, statement);
    return statement;
  }

  async executeQuery<Row>({ sql, parameters }: CompiledQuery): Promise<QueryResult<Row>> {
    try {
      const statement = this.#statement(sql);
      const values = parameters as readonly SQLInputValue[];
      if (statement.columns().length > 0) return { rows: statement.all(...values) as Row[] };
      const { changes } = statement.run(...values);
      return { rows: [], numAffectedRows: BigInt(changes) };
    } catch (error) {
      throw inWords(error, this.#sqlite.path);
    }
  }

  async *streamQuery<Row>(query: CompiledQuery): AsyncIterableIterator<QueryResult<Row>> {
    yield await this.executeQuery<Row>(query);
  }

  /** Takes the right to write at once, so that no transaction fails half way; asks again while another has it. */
  async begin(): Promise<void> {
    const { database, patience, path } = this.#sqlite;
    const until = Date.now() + patience;
    for (;;) {
      try {
        database.exec('begin immediate');
        return;
      } catch (error) {
        if (!isBusy(error) || Date.now() >= until) throw inWords(error, path);
        // Rivals that ask at different times do not keep missing each other.
        await wait(1 + Math.random() * 9);
      }
    }
  }

  end(how: 'commit' | 'rollback'): void {
    try {
      this.#sqlite.database.exec(how);
    } catch (error) {
      throw inWords(error, this.#sqlite.path);
    }
  }
}

const driverOf = (sqlite: NodeSqlite): Driver => {
  const connection = new Connection(sqlite);
  return {
    init: async () => undefined,
    acquireConnection: async () => connection,
    beginTransaction: () => connection.begin(),
    commitTransaction: async () => connection.end('commit'),
    rollbackTransaction: async () => connection.end('rollback'),
    releaseConnection: async () => undefined,
    destroy: async () => sqlite.database.close(),
  };
};

export const nodeSqliteDialect = (sqlite: NodeSqlite): Dialect => ({
  createAdapter: () => new Adapter(),
  createDriver: () => driverOf(sqlite),
  createQueryCompiler: () => new SqliteQueryCompiler(),
  createIntrospector: (db) => new SqliteIntrospector(db),
});
