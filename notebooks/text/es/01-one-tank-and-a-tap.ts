export const words = {
  file: 'un estanque',
  title: '01 · Un estanque y un grifo',
  question:
    'Un grifo vierte en un estanque lleno y el estanque rebosa. Cuando ha entrado un estanque entero de agua, ¿se ha ido toda la vieja?',
  intro: `<p>El estanque tiene 1000 L, está bien mezclado y empieza con 80 mg/L de nitrógeno de nitrato. El grifo trae agua con 2 mg/L. Lo
    que entra empuja fuera el mismo volumen, con la concentración que el estanque tiene en ese momento.</p>`,
  ask: 'El grifo da 100 L al día, así que el día 10 ha entrado un estanque entero. ¿Cuánto nitrato queda entonces?',
  guess: { label: 'Mi predicción para el día 10', unit: 'mg N/L' },
  shown: `<p>El día 10 está en {day-10} mg/L: de lo que había por encima del grifo queda el {left} %. El agua nueva se mezcla con la vieja,
    de modo que una parte de lo que rebosa es agua nueva.</p>`,
  sliders: {
    tap: { label: 'El grifo da', unit: 'L/d' },
    nitrate: { label: 'Nitrato en el agua del grifo', unit: 'mg N/L' },
  },
  changed: '<p>El día 90 el estanque está en {end} mg/L. Un estanque entero tarda {tankful} días.</p>',
  wrong: [
    'Un estanque de verdad tiene rincones por los que el agua no pasa. Entonces una parte del agua vieja se queda más tiempo que aquí, y una parte de la nueva se va enseguida.',
    'El estanque nunca baja de lo que trae el grifo. Analice también el grifo.',
    'El agua del grifo puede llevar cloro, que daña a los peces y a la biopelícula, y puede estar más fría que el estanque.',
  ],
  caution:
    'Cambie el agua despacio y observe a los peces. Adónde puede ir lo que rebosa es cosa de la legislación local.',
  exercise: '¿Cuántos estanques enteros deben entrar hasta que quede una vigésima parte del agua vieja?',
  answer: `<p>La parte que queda es e elevado a menos el número de estanques, así que hacen falta ln 20 = {twentieth} estanques. Con 100 L
    al día el estanque está en {check} mg/L después de nueve. Cambiar el agua de una vez costaría {once} de uno: un cambio por tandas
    ahorra agua y estresa a los peces.</p>`,
  sources:
    '<p>Un estanque mezclado es un balance: lo que cambia es lo que entra menos lo que sale. No necesita ningún número medido. La simulación leyó estos:</p>',
  readings: ['grifo, L/d', 'nitrato del grifo, mg N/L', 'nitrato el día 90, mg N/L'],
  labels: {
    chart: 'Nitrato en el estanque durante 90 días',
    chartNow: 'Nitrato en el estanque con su grifo',
    unit: 'nitrato, mg N/L',
    nitrate: 'nitrato',
    tankful: 'un estanque entero',
    before: 'antes',
    now: 'su grifo',
  },
} as const;
