import { afterEach, describe, expect, it, vi } from 'vitest';
import { compileModel, createParameters, readScenario, simulate } from '@leat/core';
import { useModule } from '@leat/core/module';
import { rosenbrockWith } from '../../packages/core/src/solve/rosenbrock.js';
import { sparseLu } from '../../packages/core/src/solve/sparse-lu.js';
import { smallSystem } from '../support/small-text.js';

const DAYS = 20;
/** That of the loops of the integrator, and that of the rates. */
const MODULES = 2;
const file = 'a.yaml';

/** Everything that a run left, as text. */
const told = (run: unknown): string =>
  JSON.stringify(run, (_key, value: unknown) =>
    ArrayBuffer.isView(value) ? [...(value as Float64Array)] : value,
  );

/** A library that has run nothing yet, and so has made no module, but is to use it. */
async function anew() {
  vi.resetModules();
  const core = await import('@leat/core');
  const { useModule } = await import('@leat/core/module');
  useModule();
  return core;
}

/** Everything that a run by such a library left. */
async function toldAnew(): Promise<string> {
  const core = await anew();
  const scenario = core.readScenario(smallSystem, { file, days: DAYS });
  return told(core.simulate(core.compileModel(scenario, core.createParameters(scenario.overrides))));
}

const scenario = readScenario(smallSystem, { file, days: DAYS });
const model = compileModel(scenario, createParameters(scenario.overrides));
const wanted = told(simulate(model, { integrator: rosenbrockWith(sparseLu, 'javascript') }));

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('the loops of a run', () => {
  it('give the same bytes by the module as by JavaScript', () => {
    useModule();
    expect(told(simulate(model))).toBe(wanted);
  });

  it('are of the modules, each made once in a thread, and no text is made a function', async () => {
    const made = vi.fn();
    const { Module } = WebAssembly;
    vi.stubGlobal('WebAssembly', {
      ...Object.fromEntries(
        Object.getOwnPropertyNames(WebAssembly).map((name) => [name, Reflect.get(WebAssembly, name)]),
      ),
      Module: class extends Module {
        constructor(bytes: BufferSource) {
          super(bytes);
          made();
        }
      },
    });
    const core = await anew();
    const again = core.compileModel(core.readScenario(smallSystem, { file, days: DAYS }), createParameters());
    const refuse = (): never => {
      throw new EvalError('refused');
    };
    vi.stubGlobal('Function', new Proxy(Function, { construct: refuse, apply: refuse }));
    expect(told(core.simulate(again))).toBe(wanted);
    core.simulate(again);
    expect(made).toHaveBeenCalledTimes(MODULES);
  });

  it('go by JavaScript where a policy forbids a module, and where there is no WebAssembly', async () => {
    const { CompileError } = WebAssembly;
    const forbidden = vi.fn(function refuse() {
      throw new CompileError('refused by the content security policy');
    });
    vi.stubGlobal('WebAssembly', {
      CompileError,
      Module: forbidden,
    });
    expect(await toldAnew()).toBe(wanted);
    expect(forbidden).toHaveBeenCalledTimes(MODULES);
    vi.stubGlobal('WebAssembly', undefined);
    expect(await toldAnew()).toBe(wanted);
  });

  it('go by JavaScript where there are no addresses left for its memory', async () => {
    const { Module, Instance, CompileError } = WebAssembly;
    const none = vi.fn(function refuse() {
      throw new RangeError('could not allocate memory');
    });
    vi.stubGlobal('WebAssembly', { Module, Instance, CompileError, Memory: none });
    expect(await toldAnew()).toBe(wanted);
    expect(none).toHaveBeenCalledTimes(MODULES);
  });

  it('do not hide any other fault of the module', async () => {
    vi.stubGlobal('WebAssembly', {
      CompileError: WebAssembly.CompileError,
      Module: function outOfOrder() {
        throw new RangeError('out of order');
      },
    });
    await expect(toldAnew()).rejects.toThrow('out of order');
  });
});

it('a tag of YAML makes no code', () => {
  for (const tag of ['!!js/function', '!!js/undefined', '!!python/object', '!eval'])
    expect(() => readScenario(`title: ${tag} "function () { return 1 }"\n`, { file })).toThrow(/a\.yaml:1:/);
});
