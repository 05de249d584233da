/** See `findings/complaint-finding.tsx`. */
export { ComplaintFinding as FindingForm } from '../findings/complaint-finding.tsx';
