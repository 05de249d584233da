import { stemmer } from 'stemmer';

/** Words of the shoe and what is felt in it, in both languages: who looks for one finds the other. Common practice, no source. */
