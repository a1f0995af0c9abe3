import { type CurrentPath, CurrentPaths } from './current-paths.ts';
import type { Element, Netlist, Solution } from './model.ts';
import { bareCurrents } from './report.ts';
import type { Solver } from './solve.ts';

/** The ways of the loads of a netlist through its solved states; made once for many questions. */
export class LoadWays {
  private readonly netlist: Netlist;
  private named: CurrentPaths | undefined;
  /** By number of the branch, for the states of one solver. */
  private bare: { solver: Solver; paths: CurrentPaths } | undefined;

  constructor(netlist: Netlist) {
    this.netlist = netlist;
  }

  /** Where a load's current comes from and goes to in a state. */
  follow(state: Solution, load: Extract<Element, { kind: 'load' }>): CurrentPath {
    const { id, a: plus, b: minus } = load;
    const bare = bareCurrents(state);
    if (bare !== undefined) {
      const { solver, currents } = bare;
      this.bare ??= { solver, paths: new CurrentPaths(this.netlist, solver.branchOf) };
      if (this.bare.solver === solver) {
        const currentA = currents[solver.branchOf(id)]!;
        return this.bare.paths.follow(currents, { id, plus, minus, currentA });
      }
    }
    this.named ??= new CurrentPaths(this.netlist);
    return this.named.follow(state.currentA, { id, plus, minus, currentA: state.currentA[id] ?? 0 });
  }
}
