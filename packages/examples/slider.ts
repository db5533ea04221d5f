// The page of slider.html: every move of the slider runs the tank anew, in the page itself.
import { compileModel, createParameters, seriesOf, simulate } from '@leat/core';
import { course } from './course.js';
import { tank } from './tank.js';

const found = <E extends Element>(selector: string): E => {
  const element = document.querySelector<E>(selector);
  if (element === null) throw new Error(`no ${selector} on this page`);
  return element;
};
const slider = found<HTMLInputElement>('#ration');

function show(): void {
  const run = simulate(compileModel(tank(slider.valueAsNumber / 100), createParameters()));
  const nitrate = seriesOf(run, 'nitrate@tank');
  found('#course').innerHTML = course(nitrate);
  found('#said').textContent =
    `nitrate rises to ${Math.max(...nitrate.values).toPrecision(3)} ${nitrate.unit}`;
}
slider.addEventListener('input', show);
show();
