/**
 * Prisma's schema engine as WebAssembly, over `pg`. The stock adapter stops the
 * engine in three places, which are mended here: it cuts scripts at every
 * semicolon, it does not know the type of the one-byte catalogue columns, and it
 * drops a shadow database while still connected to it.
 *
 * One engine serves one command: a comparison changes settings inside it. Every
 * connection is ended before this module returns, because a database with a
 * guest cannot serve as a template.
 */
import fs from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { PrismaPg } from "@prisma/adapter-pg";
import {
  bindMigrationAwareSqlAdapterFactory,
  ColumnTypeEnum,
  type SqlQuery,
} from "@prisma/driver-adapter-utils";
import type {
  DiagnoseMigrationHistoryOutput,
  DiffTarget,
  MigrationList,
  SchemaContainer,
  SchemaEngine,
} from "@prisma/schema-engine-wasm";
import pg from "pg";

/** What can be compared: the schema files, what the migrations lead to, the database as it is, an empty one. */
export type SchemaState = "schema" | "migrations" | "database" | "nothing";

export type EngineInput = { url: string; schema: SchemaContainer[]; migrations: MigrationList };

export type EngineCommands = {
  apply(): Promise<string[]>;
  diagnose(): Promise<DiagnoseMigrationHistoryOutput>;
  markRolledBack(migrationName: string): Promise<void>;
  diff(from: SchemaState, to: SchemaState): Promise<string>;
};

/** A migration whose script Postgres refused: which, where, and Postgres' own words. */
export class ScriptError extends Error {
  readonly migration: string;
  /** Line of the file, where Postgres names a place. */
  readonly line: number | undefined;

  constructor(migration: string, refused: pg.DatabaseError, script: string) {
    super(refused.message, { cause: refused });
    this.name = "ScriptError";
    this.migration = migration;
    if (refused.position !== undefined) {
      this.line = script.slice(0, Number(refused.position)).split("\n").length;
    }
  }
}

type Adapter = Awaited<ReturnType<PrismaPg["connect"]>>;
/** The steps of the stock adapter that see what Postgres sends; its declaration hides them. */
type AdapterInside = {
  performIO(query: SqlQuery): Promise<pg.QueryArrayResult>;
  onError(error: unknown): never;
};
/** The last script that Postgres refused, with its answer. */
type Refused = { script: string; error: pg.DatabaseError };

/** Type numbers from pg_type.dat. */
const oneByteCharOid = 18;
const textOid = 25;
const nameArrayOid = 1003;
const textArrayOid = 1009;

function mendAdapter(adapter: Adapter, onRefused: (refused: Refused) => void = () => {}): Adapter {
  const inside = adapter as unknown as AdapterInside;
  const performStock = inside.performIO.bind(adapter);
  const queryStock = adapter.queryRaw.bind(adapter);
  const oneByteColumns = new WeakMap<object, number[]>();

  inside.performIO = async (query) => {
    const result = await performStock(query);
    const columns: number[] = [];
    for (const [index, field] of result.fields.entries()) {
      if (field.dataTypeID === oneByteCharOid) {
        columns.push(index);
        field.dataTypeID = textOid;
      } else if (field.dataTypeID === nameArrayOid) field.dataTypeID = textArrayOid;
    }
    oneByteColumns.set(result.rows, columns);
    return result;
  };
  adapter.queryRaw = async (query) => {
    const result = await queryStock(query);
    for (const index of oneByteColumns.get(result.rows) ?? []) {
      result.columnTypes[index] = ColumnTypeEnum.Character;
    }
    return result;
  };
  adapter.executeScript = async (script) => {
    try {
      await adapter.underlyingDriver().query(script);
    } catch (error) {
      if (error instanceof pg.DatabaseError) onRefused({ script, error });
      inside.onError(error);
    }
  };
  return adapter;
}

class MendedPg extends PrismaPg {
  readonly #pool: pg.Pool;
  readonly #url: string;
  refused: Refused | undefined;

  constructor(pool: pg.Pool, url: string) {
    super(pool);
    this.#pool = pool;
    this.#url = url;
  }

  override async connect(): Promise<Adapter> {
    return mendAdapter(await super.connect(), (refused) => {
      this.refused = refused;
    });
  }

  override async connectToShadowDb(): Promise<Adapter> {
    const name = `anatheca_shadow_${crypto.randomUUID()}`;
    await this.#pool.query(`CREATE DATABASE "${name}"`);
    const url = new URL(this.#url);
    url.pathname = `/${name}`;
    const shadow = mendAdapter(await new PrismaPg({ connectionString: url.href, max: 1 }).connect());
    const disconnect = shadow.dispose.bind(shadow);
    shadow.dispose = async () => {
      await disconnect();
      await this.#pool.query(`DROP DATABASE IF EXISTS "${name}" WITH (FORCE)`);
    };
    return shadow;
  }
}

type EngineModule = {
  SchemaEngine: typeof SchemaEngine;
  __wbg_set_wasm(exports: WebAssembly.Exports): void;
};

let loading: Promise<EngineModule> | undefined;

/** The engine is compiled once in a process. */
async function loadEngine(): Promise<EngineModule> {
  // A panic inside the engine also rejects the command under way, with its message.
  Object.assign(globalThis, { PRISMA_WASM_PANIC_REGISTRY: { set_message: () => {} } });
  const glueFile = createRequire(import.meta.url).resolve("@prisma/schema-engine-wasm/schema_engine_bg");
  const glue = (await import("@prisma/schema-engine-wasm/schema_engine_bg")) as unknown as EngineModule;
  const bytes = fs.readFileSync(path.join(path.dirname(glueFile), "schema_engine_bg.wasm"));
  const { instance } = await WebAssembly.instantiate(bytes, {
    "./schema_engine_bg.js": glue as unknown as WebAssembly.ModuleImports,
  });
  glue.__wbg_set_wasm(instance.exports);
  const begin = instance.exports.__wbindgen_start;
  if (typeof begin === "function") begin();
  return glue;
}

const filters = { externalTables: [], externalEnums: [] };

function diffTarget(state: SchemaState, input: EngineInput): DiffTarget {
  switch (state) {
    case "schema":
      return { tag: "schemaDatamodel", files: input.schema };
    case "migrations":
      return { tag: "migrations", ...input.migrations };
    case "database":
      return { tag: "schemaDatasource", files: input.schema, configDir: input.migrations.baseDir };
    case "nothing":
      return { tag: "empty" };
  }
}

function commandsOf(engine: SchemaEngine, input: EngineInput, adapter: MendedPg): EngineCommands {
  const migrationsList = input.migrations;
  return {
    async apply() {
      try {
        return (await engine.applyMigrations({ migrationsList, filters })).appliedMigrationNames;
      } catch (error) {
        const name = /migration_name="([^"]+)"/.exec(String(error))?.[1];
        if (adapter.refused === undefined || name === undefined) throw error;
        throw new ScriptError(name, adapter.refused.error, adapter.refused.script);
      }
    },
    async diagnose() {
      return await engine.diagnoseMigrationHistory({ migrationsList, optInToShadowDatabase: false, filters });
    },
    async markRolledBack(migrationName) {
      await engine.markMigrationRolledBack({ migrationName });
    },
    async diff(from, to) {
      const result = await engine.diff({
        from: diffTarget(from, input),
        to: diffTarget(to, input),
        script: true,
        exitCode: true,
        filters,
      });
      return result.exitCode === 0 ? "" : (result.stdout ?? "");
    },
  };
}

/** Gives the work an engine of its own on the database, and ends every connection afterwards. */
export async function withSchemaEngine<Result>(
  input: EngineInput,
  work: (commands: EngineCommands) => Promise<Result>,
): Promise<Result> {
  loading ??= loadEngine();
  const { SchemaEngine } = await loading;
  // One connection: the engine's own lock belongs to a session.
  const pool = new pg.Pool({ connectionString: input.url, max: 1 });
  try {
    const adapter = new MendedPg(pool, input.url);
    const factory = bindMigrationAwareSqlAdapterFactory(adapter);
    const datamodels = input.schema.map((file): [string, string] => [file.path, file.content]);
    const engine = await SchemaEngine.new({ datamodels }, () => {}, factory);
    try {
      return await work(commandsOf(engine, input, adapter));
    } finally {
      engine.free();
    }
  } finally {
    await pool.end();
  }
}
