// Solver: branches that wait. In: branches, one after the other. Out: the one that costs the least, of equals the newest.

/** What is known of a branch before it is searched. */
interface Waiting {
  /** What nothing in it undercuts. */
  readonly leastCost: number;
}

interface Numbered<Branch> {
  readonly branch: Branch;
  readonly no: number;
}

/** A binary heap: putting in and taking out go through as many branches as there are halvings of their number. */
export class BranchQueue<Branch extends Waiting> {
  readonly #heap: Numbered<Branch>[] = [];
  #added = 0;

  add(branch: Branch): void {
    const heap = this.#heap;
    const added = { branch, no: this.#added++ };
    let at = heap.length;
    while (at > 0) {
      const above = (at - 1) >> 1;
      const parent = heap[above];
      if (parent === undefined || isBefore(parent, added)) break;
      heap[at] = parent;
      at = above;
    }
    heap[at] = added;
  }

  /** Undefined where nothing waits. */
  take(): Branch | undefined {
    const [first] = this.#heap;
    const last = this.#heap.pop();
    if (last !== undefined && this.#heap.length > 0) this.#sink(last);
    return first?.branch;
  }

  #sink(moved: Numbered<Branch>): void {
    const heap = this.#heap;
    let at = 0;
    for (;;) {
      const [left, right] = [heap[2 * at + 1], heap[2 * at + 2]];
      const isRight = right !== undefined && left !== undefined && isBefore(right, left);
      const child = isRight ? right : left;
      if (child === undefined || isBefore(moved, child)) break;
      heap[at] = child;
      at = 2 * at + (isRight ? 2 : 1);
    }
    heap[at] = moved;
  }
}

function isBefore<Branch extends Waiting>(a: Numbered<Branch>, b: Numbered<Branch>): boolean {
  if (a.branch.leastCost !== b.branch.leastCost) return a.branch.leastCost < b.branch.leastCost;
  return a.no > b.no;
}
