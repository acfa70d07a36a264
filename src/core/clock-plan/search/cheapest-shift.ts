/** An edge of a network: what it costs to cut it, in this direction and back. */
interface Edge {
  to: number
  left: number
  back: number
}

/**
 * The set of nodes whose choice costs least: each node has a price of its own for being chosen, and each pair one for the
 * first being chosen without the second. Minimum cut by augmenting along shortest ways with levels (Dinic; from memory).
 * Prices must be finite; a pair that must not be parted has a very high one. Answers which nodes are chosen and the price.
 */
export class ShiftNetwork {
  private readonly edges: Edge[][]
  private readonly size: number
  private constant = 0

  constructor(size: number) {
    this.size = size
    this.edges = Array.from({ length: size + 2 }, () => [])
  }

  /** Price of choosing a node; below zero, a gain. */
  own(node: number, price: number): void {
    if (price >= 0) this.edge(node, this.size + 1, price)
    else {
      this.constant += price
      this.edge(this.size, node, -price)
    }
  }

  /** Price of choosing the first without the second. */
  pair(chosen: number, left: number, price: number): void {
    if (price > 0) this.edge(chosen, left, price)
  }

  private edge(from: number, to: number, price: number): void {
    if (price <= 0) return
    const [there, back] = [this.edges[from], this.edges[to]]
    if (!there || !back) throw new Error('no such node')
    there.push({ to, left: price, back: back.length })
    back.push({ to: from, left: 0, back: there.length - 1 })
  }

  cheapest(): { price: number; chosen: Set<number> } {
    const [source, sink] = [this.size, this.size + 1]
    let flow = 0
    for (
      let levels = this.levels(source);
      (levels[sink] ?? -1) >= 0;
      levels = this.levels(source)
    ) {
      const next = new Int32Array(this.size + 2)
      for (;;) {
        const pushed = this.push(source, sink, Number.POSITIVE_INFINITY, levels, next)
        if (pushed <= 1e-9) break
        flow += pushed
      }
    }
    const levels = this.levels(source)
    const chosen = new Set<number>()
    for (let node = 0; node < this.size; node += 1) if ((levels[node] ?? -1) >= 0) chosen.add(node)
    return { price: flow + this.constant, chosen }
  }

  private levels(source: number): Int32Array {
    const levels = new Int32Array(this.size + 2).fill(-1)
    levels[source] = 0
    const queue = [source]
    for (const node of queue)
      for (const { to, left } of this.edges[node] ?? [])
        if (left > 1e-9 && levels[to] === -1) {
          levels[to] = (levels[node] ?? 0) + 1
          queue.push(to)
        }
    return levels
  }

  private push(
    node: number,
    sink: number,
    most: number,
    levels: Int32Array,
    next: Int32Array,
  ): number {
    if (node === sink) return most
    const own = this.edges[node] ?? []
    for (; (next[node] ?? 0) < own.length; next[node] = (next[node] ?? 0) + 1) {
      const edge = own[next[node] ?? 0]
      if (!edge || edge.left <= 1e-9 || levels[edge.to] !== (levels[node] ?? 0) + 1) continue
      const pushed = this.push(edge.to, sink, Math.min(most, edge.left), levels, next)
      if (pushed <= 1e-9) continue
      edge.left -= pushed
      const back = this.edges[edge.to]?.[edge.back]
      if (back) back.left += pushed
      return pushed
    }
    return 0
  }
}
