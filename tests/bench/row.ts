/** One line of the benchmark: the same work by Pairlog and by a peer, on the same data, in the same run. */
export interface BenchRow {
  readonly name: string;
  readonly peerName: string;
  /** How often it is measured; absent: as often as the others. */
  readonly rounds?: number;
  /** Makes the data, seeded; not measured. */
  setUp(): Promise<{
    /** Either may answer with a promise. */
    ours(): unknown;
    peer(): unknown;
    /** Throws where the two answers differ: a faster wrong answer fails. */
    check(ours: unknown, peer: unknown): void;
    tearDown?(): Promise<void>;
  }>;
}
