/** Bench checks: how foam and tread change with distance, how far they hold, and the arrival check. */
import type { TabProps } from '../desk-state.ts';
import { BenchFile } from './bench-file.tsx';
import { BenchForm } from './bench-form.tsx';
import { Deviations } from './deviations.tsx';
import { Gauges } from './gauges.tsx';
import { Wear } from './wear.tsx';

export const Bench = (props: TabProps) => (
  <>
    <Wear {...props} />
    <Deviations {...props} />
    <div class="two-columns no-print">
      <BenchForm {...props} />
      <BenchFile {...props} />
    </div>
    <Gauges {...props} />
  </>
);
