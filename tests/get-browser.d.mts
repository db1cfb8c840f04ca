/** How to get a browser: what it says of itself, and what it runs. */
export interface Way {
  readonly says: string;
  readonly commands: readonly (readonly string[])[];
}
/** What may be tried on a system, in turn. */
export declare function waysToGet(system: {
  /** Whether it has apt-get. */
  readonly hasApt: boolean;
  /** What to put before a command that needs root; undefined where nothing helps. */
  readonly asRoot: readonly string[] | undefined;
}): readonly Way[];
