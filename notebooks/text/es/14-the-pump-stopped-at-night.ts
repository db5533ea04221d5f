export const words = {
  file: 'una noche sin luz',
  title: '14 · La bomba se paró de noche',
  question: 'A las nueve de la noche se va la luz, y todos duermen. ¿Cuánto tiempo tienen los peces?',
  intro: `<p>60 tilapias de 150 g viven en 1 m³ y reciben 120 g de alimento al día. La bomba y el soplador de aire cuelgan del mismo enchufe.
    La luz vuelve a las cinco de la mañana, ocho horas después. No llega agua al biofiltro ni aire al estanque. Estos peces no deberían
    estar por debajo de 3 mg/L de oxígeno; antes del corte tienen cerca de 8.</p>`,
  ask: '¿Después de cuántas horas baja el oxígeno del estanque de 3 mg/L?',
  guess: { label: 'Mi predicción', unit: 'h' },
  shown: `<p>Después de {hours} h está por debajo de {limit} mg/L, y en lo más bajo, en {lowest}: el {dead} % de los peces muere antes de la
    mañana. Los peces siguen respirando, y solo la superficie quieta trae oxígeno. Si se hubiera parado solo la bomba y el aire hubiera
    seguido, el oxígeno no habría bajado de {pump} mg/L; el amonio llegaría a {pump-tan} mg N/L, y moriría el {pump-dead} %. La falta de oxígeno mata en
    horas, el amoníaco tarda días: lo que no debe pararse es el aire.</p>`,
  sliders: {
    hours: { label: 'La luz falta durante', unit: 'h' },
    fish: { label: 'Peces en el estanque', unit: 'número' },
    battery: { label: 'Una batería mantiene el aire durante', unit: 'h' },
  },
  never: '<p>El oxígeno no baja nunca de 3 mg/L.</p>',
  passes: '<p>El oxígeno baja de 3 mg/L {passed} h después del corte.</p>',
  changed: `<p>Oxígeno mínimo {lowest} mg/L, amonio máximo {tan} mg N/L; al final viven {left} de {fish} peces.</p>`,
  wrong: [
    'Un solo enchufe para la bomba y el aire. Dos circuitos, una batería para el aire, una alarma que llame a un teléfono.',
    'Dar de comer tarde: un pez recién alimentado respira más durante horas. El modelo respira por días y no lo muestra.',
    'La bomba vuelve y empuja de golpe al estanque lo que se pudrió en el biofiltro y las tuberías. Si estuvo parado muchas horas, deje que la primera agua vaya a otra parte.',
    'Un tubo que vacía el estanque cuando se para la bomba: mire hacia dónde hace sifón cada tubería antes de que lo haga la noche.',
  ],
  caution:
    'Nunca meta la mano en el agua cerca de un enchufe: primero baje el interruptor. La instalación cerca del agua es cosa de electricistas autorizados, con protección diferencial. Peces muertos y moribundos: decide su legislación sobre bienestar y sobre cadáveres.',
  exercise:
    '¿Cuántas horas debe mantener el aire una batería para que 60 peces pasen las ocho horas por encima de 3 mg/L? ¿Y cuánto tiempo tendrían 30 peces sin ella?',
  answer: `<p>Bastan {battery} h de aire: después, el oxígeno que queda en el agua dura hasta la mañana. 30 peces sin batería bajan de 3 mg/L
    después de: {half} h.</p>`,
  readings: ['horas sin luz', 'peces', 'batería, h', 'oxígeno mínimo, mg/L', 'peces vivos'],
  labels: {
    oxygenChart: 'Oxígeno en el estanque alrededor del corte',
    oxygenNow: 'Oxígeno en el estanque con lo que usted eligió',
    oxygenUnit: 'oxígeno, mg/L',
    ammoniaChart: 'Amonio en el estanque alrededor del corte',
    ammoniaUnit: 'amonio, mg N/L',
    hours: 'horas desde que se fue la luz',
    both: 'sin bomba ni aire',
    pump: 'solo sin bomba',
    danger: 'peligro',
    before: 'el de arriba',
    yours: 'el suyo',
    notAtAll: '(no en toda la noche)',
  },
} as const;
