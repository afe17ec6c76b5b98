/** Mutants are judged by the same draws each time: a verdict must hang on the mutant, not on luck. */
import * as fc from 'fast-check';

fc.configureGlobal({ seed: 20_250 });
