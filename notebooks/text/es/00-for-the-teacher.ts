export const teacher = `
<h1>Para el docente: una clase de 90 minutos</h1>
<p>{lesson-13} abre la clase con lo que dicen los kits, {lesson-04} y {lesson-15} la llevan, {lesson-14} la cierra. Funciona mejor una
pareja por pantalla que una persona sola: tienen que acordar una predicción antes de que se muestre nada. Lo que sigue a la predicción
no está en la página antes de hacerla, así que nadie puede mirar por adelantado.</p>
<div class="wide" tabindex="0" role="region" aria-label="Plan de 90 minutos"><table>
<thead><tr><th>minutos</th><th>qué</th><th>con</th></tr></thead>
<tbody>
<tr><td>0–10</td><td>En el invernadero: ¿adónde va el agua, por dónde entra el nitrógeno? Cada pareja dibuja el circuito</td><td>papel</td></tr>
<tr><td>10–25</td><td>Medir (abajo). Anotar los números con unidad y hora en el registro</td><td>kits de análisis, hoja «registro»</td></tr>
<tr><td>25–37</td><td>¿Qué hemos medido? Mismo color, otra agua: predecir, descubrir, poner el pH y la temperatura de hoy</td><td>{lesson-13}</td></tr>
<tr><td>37–52</td><td>Arrancar un biofiltro: predecir el orden de los picos. Cada pareja busca una manera de reducir el segundo a la mitad</td><td>{lesson-04}</td></tr>
<tr><td>52–67</td><td>Un verano de sequía: ¿a qué se renuncia? Cada pareja escribe su regla: desde qué nivel del sumidero, qué hacer</td><td>{lesson-15}</td></tr>
<tr><td>67–77</td><td>La bomba se paró de noche: ¿cuántas horas tienen nuestros peces? Buscar el enchufe del soplador y el de la bomba</td><td>{lesson-14}</td></tr>
<tr><td>77–85</td><td>¿Qué no sabe el modelo? Cada pareja nombra una cosa vista hoy que no está en él</td><td>{lesson-12}</td></tr>
<tr><td>85–90</td><td>Una frase por persona: ¿qué mediría usted mañana, y por qué eso?</td><td></td></tr>
</tbody></table></div>
<p>Con una segunda clase: {lesson-16}, por parejas, a partir del agua que hay en su lugar. Como tarea: {lesson-05}, {lesson-06}. Imprima
antes las hojas de trabajo; las respuestas están en una página aparte.</p>
<h2>Qué medir ese mismo día en el invernadero</h2>
<ul>
<li>Temperatura del agua, por la mañana y a mediodía, en el estanque y en la cama.</li>
<li>Amonio, nitrito y nitrato en el estanque; anotar si el kit cuenta el nitrógeno o el ion entero.</li>
<li>Alcalinidad (dureza de carbonatos) y pH, los dos, en el sumidero.</li>
<li>El alimento dado hoy, pesado, y la proteína que indica el saco.</li>
<li>El nivel del sumidero, dos veces, con algunas horas entre medias y la reposición cerrada: ¿cuánto se evapora?</li>
<li>La superficie de cama plantada y la vacía.</li>
</ul>
<p>Guárdelo en el registro en blanco: es el comienzo de {lesson-11}.</p>
<h2>Respuestas equivocadas frecuentes</h2>
<ul>
<li><strong>«Un estanque entero de agua nueva sustituye a la vieja.»</strong> La nueva se mezcla con la vieja; queda más de un tercio de la
vieja.</li>
<li><strong>«El kit muestra lo mismo, luego el agua es la misma.»</strong> Sin pH ni temperatura nadie sabe cuánto es amoníaco libre.</li>
<li><strong>«El amonio está a cero, luego el biofiltro está listo.»</strong> Falta el nitrito.</li>
<li><strong>«Las plantas limpian el agua, así que no hace falta filtro.»</strong> La mayor parte la hacen las bacterias; el cultivo toma lo
que necesita para crecer.</li>
<li><strong>«El pH está bien, luego la alcalinidad también.»</strong> El pH baja despacio mientras queda alcalinidad, y deprisa cuando casi se
ha gastado.</li>
<li><strong>«Más alimento, más lechuga.»</strong> Solo si faltaba nitrógeno.</li>
<li><strong>«Más alimento, más nitrato.»</strong> Hasta cierto punto; más allá, el lodo consume más nitrato del que llega.</li>
<li><strong>«En una sequía se seca el estanque.»</strong> Se seca el sumidero; el rebosadero mantiene lleno el estanque.</li>
<li><strong>«Con menos alimento el agua dura más.»</strong> El agua la pierden las hojas, no los peces.</li>
<li><strong>«Cuando falla la luz mata el amoníaco.»</strong> La falta de oxígeno llega mucho antes.</li>
<li><strong>«Cuarenta simulaciones coinciden, luego es verdad.»</strong> Comparten un mismo modelo.</li>
</ul>
<h2>Precauciones del día</h2>
<p class="caution">Los reactivos de los kits son tóxicos: guantes y una botella para los residuos. Nada de bases fuertes en clase. No tocar
enchufes ni bombas cerca del agua. Lavarse las manos antes y después; no se come nada sin lavar. Los peces solo los maneja quien está
formado y autorizado para ello.</p>
`;
