/** What is the hub doing? Counters in the Prometheus text format, without anybody's name or words. */
import { Counter, Histogram, Registry, collectDefaultMetrics } from 'prom-client';

export interface Metrics {
  /** By method, path pattern and status. */
  readonly requests: Histogram<'method' | 'path' | 'status'>;
  /** Revisions by verdict: stored, known, refused. */
  readonly verdicts: Counter<'verdict'>;
  /** Attachments that came in whole. */
  readonly attachments: Counter;
  /** The text that a Prometheus server reads, and its media type. */
  text(): Promise<string>;
  readonly contentType: string;
}

export const createMetrics = (): Metrics => {
  const registry = new Registry();
  collectDefaultMetrics({ register: registry });
  return {
    requests: new Histogram({
      name: 'pairlog_request_seconds',
      help: 'Time from request to answer',
      labelNames: ['method', 'path', 'status'],
      buckets: [0.001, 0.005, 0.01, 0.05, 0.1, 0.5, 1, 5],
      registers: [registry],
    }),
    verdicts: new Counter({
      name: 'pairlog_revisions_total',
      help: 'Revisions that devices sent, by verdict',
      labelNames: ['verdict'],
      registers: [registry],
    }),
    attachments: new Counter({
      name: 'pairlog_attachments_total',
      help: 'Attachments that came in whole',
      registers: [registry],
    }),
    text: () => registry.metrics(),
    contentType: registry.contentType,
  };
};
