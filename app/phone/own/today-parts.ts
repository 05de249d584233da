/** The parts of the first screen that come once it stands, in one file. */
import './own.css';

export { InstallCard } from './install-card.tsx';
export { PairShoe } from './pair-shoe.tsx';
export { SavedCard } from './saved-card.tsx';
