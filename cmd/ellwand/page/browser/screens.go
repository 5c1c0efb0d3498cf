package browser

// Screen of the page: its address, and the expression that says that it is there whole.
type Screen struct{ Name, Hash, There string }

// Screens of the page, in a folder with the job blouse.yaml.
var Screens = []Screen{
	{"begin", "#/", `document.querySelector('[data-screen=begin] .cards img')`},
	{"pattern", "#/pattern", `document.querySelector('[data-screen=pattern] .rows li')`},
	{"cloth", "#/cloth", `document.querySelector('[data-screen=cloth] .gallery img')`},
	{"clients", "#/clients", `document.querySelector('[data-screen=clients] .visit .field')`},
	{"measure", "#/job/blouse.yaml/measure", `document.querySelector('[data-screen=measure] .where img')`},
	{"pieces", "#/job/blouse.yaml/pieces", `document.querySelector('[data-screen=pieces] .draft .cutting')`},
	{"lay", "#/job/blouse.yaml/lay",
		`document.querySelector('[data-screen=lay] .cloth .piece') && document.querySelector('.said .amount').textContent`},
	{"table", "#/job/blouse.yaml/table", `document.querySelector('[data-screen=table] .remnant .stuff')`},
	{"charge", "#/job/blouse.yaml/charge",
		`document.querySelector('[data-screen=charge] .paper') && !document.querySelector('main [aria-busy]')`},
	{"print", "#/job/blouse.yaml/print", `document.querySelector('[data-screen=print] .prints a')`},
	{"keep", "#/job/blouse.yaml/keep", `document.querySelector('[data-screen=keep] textarea')`},
}
