// Solver: the open nodes of a search. In: nodes, one after the other. Out: the one of the least bound, of equals the newest.

/** What is known of a node before it is searched. */
interface Bounded {
  /** Nothing in it costs less. */
  readonly bound: number;
}

interface Numbered<Node> {
  readonly node: Node;
  readonly no: number;
}

/** A binary heap: putting in and taking out cost the logarithm of how many nodes are open. */
export class NodeQueue<Node extends Bounded> {
  readonly #heap: Numbered<Node>[] = [];
  #added = 0;

  add(node: Node): void {
    const heap = this.#heap;
    const added = { node, no: this.#added++ };
    let place = heap.length;
    while (place > 0) {
      const above = (place - 1) >> 1;
      const parent = heap[above];
      if (parent === undefined || isBefore(parent, added)) break;
      heap[place] = parent;
      place = above;
    }
    heap[place] = added;
  }

  /** Undefined where no node is open. */
  take(): Node | undefined {
    const [first] = this.#heap;
    const last = this.#heap.pop();
    if (last !== undefined && this.#heap.length > 0) this.#sink(last);
    return first?.node;
  }

  #sink(moved: Numbered<Node>): void {
    const heap = this.#heap;
    let place = 0;
    for (;;) {
      const [left, right] = [heap[2 * place + 1], heap[2 * place + 2]];
      const isRight = right !== undefined && left !== undefined && isBefore(right, left);
      const child = isRight ? right : left;
      if (child === undefined || isBefore(moved, child)) break;
      heap[place] = child;
      place = 2 * place + (isRight ? 2 : 1);
    }
    heap[place] = moved;
  }
}

function isBefore<Node extends Bounded>(a: Numbered<Node>, b: Numbered<Node>): boolean {
  if (a.node.bound !== b.node.bound) return a.node.bound < b.node.bound;
  return a.no > b.no;
}
