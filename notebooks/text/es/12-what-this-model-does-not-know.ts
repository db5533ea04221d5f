export const words = {
  file: 'lo que no se sabe',
  title: '12 · Lo que este modelo no sabe',
  question: '¿Dónde se equivoca este modelo, y cómo se podría averiguar?',
  intro: `<p>Un modelo que nombra sus errores sirve más que uno que no tiene ninguno que mostrar. Un número lo enseña bien: lo denso que es el
    lodo. Nadie lo midió en su estanque. El lodo suelto es grueso, el oxígeno llega a poca parte de él, y donde no llega, el nitrato se
    convierte en gas.</p>`,
  given: `<p>Las tablas dicen {value} g de materia seca por litro de lodo, de memoria, y puede ser cualquier cosa entre {low} y {high}. Con
    el más denso, el nitrato termina en {dense} mg N/L.</p>`,
  ask: 'Con el lodo más suelto del intervalo y todo lo demás igual, ¿dónde termina el nitrato?',
  guess: { label: 'Mi predicción', unit: 'mg N/L' },
  shown: `<p>Solo por este número el nitrato termina en {loose} mg N/L: de todo el nitrógeno sale como gas el {gas-loose} %, no el
    {gas-dense} %.</p>`,
  sliders: {
    density: { label: 'Materia seca en el lodo sedimentado', unit: 'g/L' },
    feed: { label: 'Alimento', unit: 'g/d' },
  },
  changed: `<p>Gas: {gas-now} %. El nitrato termina en {end} mg N/L. Un frasco le dice este número: llénelo de lodo, deje que sedimente, tire
    el agua, seque lo que queda y péselo.</p>`,
  leftOut: `<h2>Lo que se omite</h2>
    <ul>
    <li><strong>Fósforo, hierro, ácidos orgánicos.</strong> No hay carencias: el cultivo toma potasio, calcio y magnesio con su
    nitrógeno, y nunca encuentra demasiado poco.</li>
    <li><strong>Cal.</strong> Aquí se disuelve y precipita; con qué rapidez, se sabe mal.</li>
    <li><strong>Rincones.</strong> Todos los recipientes están bien mezclados. No se ven aguas muertas ni atajos.</li>
    <li><strong>Lodo.</strong> Lo que yace no lo remueve nadie, salvo quien vacía o limpia; no se lo comen las lombrices.</li>
    <li><strong>Noche.</strong> La luz es la de un día entero. Los peces no la sienten, ni tampoco el hacinamiento, el agua ácida y la
    enfermedad.</li>
    <li><strong>Óxido nitroso</strong> y lo que hacen el estrés y el día libre de quien cuida.</li>
    <li><strong>Dos poblaciones sobre una superficie.</strong> Las que nitrifican tienen aquí cada una su sitio; en una película de
    verdad se estorban.</li>
    <li><strong>Películas en agua ácida.</strong> Aquí se acostumbran, en semanas. Hasta dónde y con qué rapidez, no hay acuerdo: películas a
    pH 4,3 y 5 trabajaron tan bien como cualquiera, y un biofiltro con plantas a pH 6, a la cuarta parte que a 8.</li>
    </ul>`,
  misses: `<h2>En qué se equivoca, hasta donde se sabe</h2>
    <p>El modelo se compara con valores publicados y con sistemas enteros; nada está ajustado a ellos. Estos son los fallos, leídos del
    documento que hacen las pruebas (<code>npm run validate</code>, en inglés): {missed} cantidades de sistemas enteros quedan fuera de
    la banda del propio modelo, y {single} valores sueltos fuera de la suya. No están en la lista: las cantidades cuya banda es más ancha que cuatro
    veces, ni las de un sistema que se viene abajo en más de uno de cada veinte sorteos. Tampoco cuentan a favor.</p>`,
  wrong: [
    'Creer una imagen porque es suave.',
    'Girar un número hasta que el modelo encaje, y llamar a eso una explicación.',
    'Preguntarle lo que omite: responderá de todos modos.',
  ],
  caution:
    'Ningún modelo le libra de medir. Los peces, los alimentos, los vertidos de agua y la electricidad siguen su legislación y a profesionales autorizados.',
  exercise:
    'Elija un fallo de la lista. ¿Qué medición en su invernadero diría si está más cerca de usted el modelo o la publicación?',
  answer: `<p>Para el gas: pese durante un mes el alimento, los peces, el cultivo cortado y el lodo seco, y analice el nitrato al principio y
    al final. Lo que falta es gas. Entre el {dense} y el {loose} % de todo el nitrógeno está aquí por decidir, así que un mes decide
    mucho.</p>`,
  readings: ['materia seca, g/L', 'alimento, g/d', 'gas, %', 'nitrato al final, mg N/L'],
  labels: {
    bars: 'Nitrato después de 90 días',
    dense: 'lodo denso',
    loose: 'lodo suelto',
    denseShort: 'denso',
    looseShort: 'suelto',
    yours: 'el suyo',
    chart: 'Nitrato según lo denso que es el lodo',
    unit: 'nitrato, mg N/L',
    systems: 'Fallos en sistemas enteros',
    single: 'Valores sueltos que se fallan, con el motivo hasta donde se sabe',
    quantity: 'cantidad',
    value: 'valor',
    published: 'publicado',
    modelSays: 'modelo',
    median: 'modelo, mediana',
    band: 'nueve de cada diez',
    reason: 'motivo',
  },
} as const;
