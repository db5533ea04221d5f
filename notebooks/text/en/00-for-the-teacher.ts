/** The page for the teacher, HTML. `{lesson-NN}` is a link to that lesson. */
export const teacher = `
<h1>For the teacher: a class of 90 minutes</h1>
<p>{lesson-13} opens the class with what the kits say, {lesson-04} and {lesson-15} carry it, {lesson-14} ends it. Pairs at one screen
work better than one a screen: they must agree on a prediction before anything is shown. Nothing behind the prediction is in the page
before it, so nobody can look ahead.</p>
<div class="wide" tabindex="0" role="region" aria-label="Plan of 90 minutes"><table>
<thead><tr><th>minutes</th><th>what</th><th>with</th></tr></thead>
<tbody>
<tr><td>0–10</td><td>In the greenhouse: where does water go, where does nitrogen come in? Each pair draws the loop</td><td>paper</td></tr>
<tr><td>10–25</td><td>Measure (below). Write numbers with units and time into the log</td><td>test kits, worksheet “log”</td></tr>
<tr><td>25–37</td><td>What did we measure? Same colour, other water: predict, reveal, put in today’s pH and temperature</td><td>{lesson-13}</td></tr>
<tr><td>37–52</td><td>Starting a biofilter: predict the order of the peaks. Each pair finds one way to halve the second</td><td>{lesson-04}</td></tr>
<tr><td>52–67</td><td>A drought summer: what do you give up? Each pair writes its rule: from which level of the sump, what</td><td>{lesson-15}</td></tr>
<tr><td>67–77</td><td>The pump stopped at night: how many hours have our fish? Find the plug of the blower and of the pump</td><td>{lesson-14}</td></tr>
<tr><td>77–85</td><td>What does the model not know? Each pair names one thing they saw today that is not in it</td><td>{lesson-12}</td></tr>
<tr><td>85–90</td><td>One sentence each: what would you measure tomorrow, and why that?</td><td></td></tr>
</tbody></table></div>
<p>With a second class: {lesson-16}, in pairs, from the water that your place has. As homework: {lesson-05}, {lesson-06}. Print the
worksheets before; the answers are on a page of their own.</p>
<h2>What to measure in the greenhouse the same day</h2>
<ul>
<li>Water temperature, morning and noon, in the tank and in the bed.</li>
<li>Ammonia, nitrite and nitrate in the tank; note whether the kit counts nitrogen or the whole ion.</li>
<li>Alkalinity (carbonate hardness) and pH, both, in the sump.</li>
<li>Feed given today, weighed, and the protein on the bag.</li>
<li>Level in the sump, twice, some hours apart, with the top-up shut: how much evaporates?</li>
<li>Bed area planted, and bare.</li>
</ul>
<p>Keep them in the blank log: it is the beginning of {lesson-11}.</p>
<h2>Common wrong answers</h2>
<ul>
<li><strong>“One tankful of new water replaces the old.”</strong> New mixes with old; over a third of the old is left.</li>
<li><strong>“The kit shows the same, so the water is the same.”</strong> Without pH and temperature nobody knows how much of it is free
ammonia.</li>
<li><strong>“Ammonia is zero, so the filter is ready.”</strong> Nitrite is still to come.</li>
<li><strong>“Plants clean the water, so no filter is needed.”</strong> Bacteria do most of it; crops take up what they need to grow.</li>
<li><strong>“pH is fine, so alkalinity is fine.”</strong> pH falls slowly while alkalinity lasts, and fast when it is nearly spent.</li>
<li><strong>“More feed, more lettuce.”</strong> Only when nitrogen was short.</li>
<li><strong>“More feed, more nitrate.”</strong> Up to a point; beyond it sludge burns more nitrate than comes.</li>
<li><strong>“In a drought the fish tank runs dry.”</strong> The sump does; the standpipe keeps the tank full.</li>
<li><strong>“Feed less, and water lasts longer.”</strong> Leaves lose the water, not fish.</li>
<li><strong>“When the power fails ammonia kills.”</strong> Want of oxygen is there long before.</li>
<li><strong>“Forty runs agree, so it is true.”</strong> They share one model.</li>
</ul>
<h2>Cautions for the day</h2>
<p class="caution">Kit reagents are poisonous: gloves, and a bottle for the waste. No strong base in a class. Hands off plugs and pumps near
water. Wash hands before and after; nothing is eaten unwashed. Fish are handled only by those who are trained and allowed to.</p>
`;
