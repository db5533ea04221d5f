export const words = {
  file: 'un balance',
  title: '02 · Leer un balance de nitrógeno',
  question: 'Nadie ve salir el nitrógeno como gas. ¿Cómo se puede saber cuánto salió?',
  intro: `<p>Un balance tiene tres partes: lo que entró, lo que salió y lo que el sistema guarda de más. Entrada menos salida menos lo
    guardado es cero, siempre. Si no lo es, algo no se ha contado. Aquí un pequeño sistema inventado recibe 60 g de alimento al día
    durante 90 días; la tabla tiene lo que podría medir quien lo cuida.</p>`,
  ask: '¿Cuántos gramos de nitrógeno salieron como gas?',
  guess: { label: 'Mi predicción', unit: 'g N' },
  shown: `<p>El modelo dice {gas} g: exactamente lo que falta en la tabla. Lo hicieron bacterias en los sólidos sedimentados, por debajo de
    la profundidad a la que llega el oxígeno: respiran nitrato.</p>`,
  sliders: {
    feed: { label: 'Alimento', unit: 'g/d' },
    exchange: { label: 'Agua que se deja pasar', unit: 'L/d' },
    error: { label: 'Error de la etiqueta del alimento', unit: '%' },
  },
  changed: `<p>El balance cierra cada vez: lo que sobra es redondeo en las últimas cifras del ordenador. Gas: {gas-now} g, {times} veces lo
    que hay con 60 g de alimento al día sin dejar pasar agua. La capa de sólidos es más gruesa donde se da más alimento, y una parte menor tiene
    oxígeno. El nitrato en el sumidero termina en {end} mg/L. Si la etiqueta del saco se equivoca en un {error} %, el gas calculado por
    diferencia daría {read} g.</p>`,
  wrong: [
    'Lo que se halla por diferencia recoge los errores de todas las demás líneas. Un error pequeño de una línea grande es un error grande de una pequeña.',
    'Líneas olvidadas: peces muertos, alimento derramado, raíces en el compost, agua salpicada.',
    'Nitrato «como NO3» contado como nitrógeno: el número es más de cuatro veces demasiado grande.',
  ],
  caution:
    'El agua que se deja pasar va a alguna parte: la legislación local dice adónde, y cuánto nitrato puede llevar.',
  exercise:
    'Se dan 60 g de alimento al día y la etiqueta del saco se equivoca en un 10 %. ¿En qué porcentaje se lee mal el gas?',
  answer: '<p>En un {misread} %. El error del alimento pasa entero al número menor.</p>',
  readings: ['alimento, g/d', 'agua que pasa, L/d', 'entrada, g N', 'salida, g N', 'gas, g N'],
  labels: {
    measured: 'Lo que se podría medir, 90 días, 60 g de alimento al día',
    nitrogen: 'nitrógeno',
    in: 'entró: alimento, agua, plántulas; y lo que el sistema guarda de menos',
    gone: 'salió como nitrógeno gaseoso',
    balance: 'todo el sistema, 90 días',
    cameIn: 'entrada',
    wentOut: 'salida',
    held: 'guardado de más',
    residual: 'entrada − salida − guardado',
  },
} as const;
