// Policy: the order of the chosen way. In: needs, what all ways share. Out: the order, searched for at length, with its reasons.
import type { Order } from '../../model/order.js';
import { chooseOrder } from '../choose-order.js';
import { asNeeds } from '../promise/find-promise.js';
import type { Needs, Weighing } from './open-weighing.js';

export const placeChosen = (needs: Needs, { market, searches }: Weighing): Promise<Order> =>
  chooseOrder(asNeeds(needs), market, searches.own, searches.reasons);
