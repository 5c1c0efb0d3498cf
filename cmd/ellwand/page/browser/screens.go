package browser

import "github.com/chromedp/chromedp"

// Screen of the page: its address, and the expression that says that it is there whole;
// where something is done on it first, what, and the expression that says that it is done.
type Screen struct{ Name, Hash, There, Do, Done string }

// Screens of the page, in a folder with the jobs blouse.yaml and kaftan.yaml.
var Screens = []Screen{
	{Name: "begin", Hash: "#/", There: `document.querySelector('[data-screen=begin] .cards img')`},
	{Name: "pattern", Hash: "#/pattern", There: `document.querySelector('[data-screen=pattern] .rows li')`},
	{Name: "cloth", Hash: "#/cloth", There: `document.querySelector('[data-screen=cloth] .gallery img')`},
	{Name: "clients", Hash: "#/clients", There: `document.querySelector('[data-screen=clients] .visit .field')`},
	{Name: "measure", Hash: "#/job/blouse.yaml/measure",
		There: `document.querySelector('[data-screen=measure] .where img')`},
	{Name: "pieces", Hash: "#/job/blouse.yaml/pieces",
		There: `document.querySelector('[data-screen=pieces] .draft .cutting')`},
	{Name: "lay", Hash: "#/job/blouse.yaml/lay",
		There: `document.querySelector('[data-screen=lay] .cloth .piece') && document.querySelector('.said ` +
			`.amount').textContent`},
	{Name: "table", Hash: "#/job/blouse.yaml/table", There: `document.querySelector('[data-screen=table] .remnant ` +
		`.stuff')`},
	{Name: "charge", Hash: "#/job/blouse.yaml/charge",
		There: `document.querySelector('[data-screen=charge] .paper > *') && !document.querySelector('main [aria-busy]')`},
	{Name: "sizes", Hash: "#/job/kaftan.yaml/charge", There: `document.querySelector('.sizes input')`,
		Do: `document.querySelectorAll('.sizes input').forEach((one, i) => { if (i < 4) one.click(); });
			document.querySelector('.bySize button').click()`,
		Done: `document.querySelector('.bySize td')`},
	{Name: "quote", Hash: "#/job/blouse.yaml/charge",
		There: `document.title.includes('Concert') && document.querySelector('.paper select') &&
			!document.querySelector('main [aria-busy]')`,
		Do: `(() => {
			const write = (field, text) => {
				field.value = text;
				field.dispatchEvent(new Event('input', { bubbles: true }));
				field.dispatchEvent(new Event('change', { bubbles: true }));
			};
			write(document.querySelector('.paper select'), 'EUR');
			document.querySelectorAll('.paper .much input').forEach((field) => write(field, '12.50'));
			document.querySelectorAll('.paper details').forEach((one) => { one.open = true; });
		})()`,
		Done: `document.querySelector('.paper .total .figure').textContent && !document.querySelector('main [aria-busy]')`},
	{Name: "print", Hash: "#/job/blouse.yaml/print", There: `document.querySelector('[data-screen=print] .prints a')`},
	{Name: "keep", Hash: "#/job/blouse.yaml/keep", There: `document.querySelector('[data-screen=keep] textarea')`},
	{Name: "asked", Hash: "#/?", There: `document.querySelector('[data-screen=begin] .gallery img')`,
		Do:   `document.querySelector('.gallery input').click()`,
		Done: `document.querySelector('.numbers input[name=bust_girth]')`},
	{Name: "edge", Hash: "#/job/blouse.yaml/pieces", There: `document.querySelector('[data-screen=pieces] .draft .edge')`,
		Do:   `document.querySelector('.draft .edge').dispatchEvent(new MouseEvent('click', { bubbles: true }))`,
		Done: `document.querySelector('.panel input')`},
	{Name: "parts", Hash: "#/job/blouse.yaml/pieces", There: `document.querySelector('.parts .adding button')`,
		Do:   `document.querySelectorAll('.options details').forEach((one) => { one.open = true; })`,
		Done: `document.querySelector('.cutFrom[open] .adding[open] input')`},
	{Name: "enough", Hash: "#/job/blouse.yaml/table",
		There: `document.querySelector('[data-screen=table] .remnant .stuff')`,
		Do:    `document.querySelector('main form .main').click()`,
		Done:  `document.querySelector('.answer .amount, .answer .fault')`},
	{Name: "changes", Hash: "#/job/kaftan.yaml/table",
		There: `document.title.includes('Midsummer') && document.querySelector('[data-screen=table] .remnant .stuff')`,
		Do: `(() => {
			const fields = document.querySelectorAll('main form input[required]');
			['290', '140'].forEach((text, i) => { fields[i].value = text; });
			fields[0].dispatchEvent(new Event('change'));
			document.querySelector('main form .main').click();
		})()`,
		Done: `document.querySelector('.changes li')`},
	{Name: "hand", Hash: "#/job/blouse.yaml/lay", There: `document.querySelector('[data-screen=lay] .cloth .piece')`,
		Do: `document.querySelectorAll('main details').forEach((one) => { one.open = true; });
			document.querySelector('.cloth .piece').focus()`,
		Done: `document.querySelector('.inHand h2')?.textContent`},
}

// Put the screen before the visitor.
func (s Screen) Put(v *Visitor) {
	v.Helper()
	v.Show(s.Hash, s.There)
	if s.Do == "" {
		return
	}
	v.Do(chromedp.Evaluate[chromedp.Void](s.Do))
	v.Until(s.Done)
}
