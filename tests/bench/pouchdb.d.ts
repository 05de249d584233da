/** What the bench uses of PouchDB, which brings no types of its own. */
declare module 'pouchdb-core' {
  export interface Database {
    bulkDocs(docs: readonly object[]): Promise<readonly object[]>;
    info(): Promise<{ doc_count: number }>;
    destroy(): Promise<unknown>;
    get(id: string): Promise<object>;
  }
  const PouchDB: {
    new (name: string, options: { adapter: string }): Database;
    plugin(plugin: unknown): typeof PouchDB;
    replicate(
      from: Database,
      to: Database,
      options: { batch_size: number },
    ): Promise<{ ok: boolean; docs_written: number }>;
  };
  export default PouchDB;
}
declare module 'pouchdb-adapter-idb' {
  const plugin: unknown;
  export default plugin;
}
declare module 'pouchdb-replication' {
  const plugin: unknown;
  export default plugin;
}
