// Report words: whether postage is known. In: the plan. Out: yes or no.
import type { Plan } from '../../model/plan.js';

/** False where no shops sheet says what shops ask for sending. */
export const isPostageKnown = ({ defaults }: Plan): boolean =>
  !defaults.some(({ sheet, column }) => sheet === 'shops' && column === 'postage');
