/** The styles that the saved file carries: those of its drawings and its own. */
import charts from '../../parts/charts/charts.css?inline';
import footMap from '../../parts/foot-map/foot-map.css?inline';
import tokens from '../../parts/tokens.css?inline';
import own from '../../report/report.css?inline';

export const reportStyles: string = [tokens, footMap, charts, own].join('\n');
