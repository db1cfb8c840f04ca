// Instead: whether a choice stands. In: the choice. Out: yes or no.
import type { FrontierChoice } from '../../../model/frontier.js';

/** Proved, and everything is met. */
export const isFirm = ({ status }: FrontierChoice): boolean => status === 'proved';
