package straightcut

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces/language"
)

// usual values of each shape, in mm; 0 where there is none [source.OwnChoice].
var usual = map[Shape]struct {
	name                       string
	length, ease, width, depth float64
	shortest, longest          float64
}{
	Kaftan:  {"kaftan", 1200, 300, 0, 0, 500, 1700},
	Kimono:  {"kimono", 1100, 200, 0, 0, 600, 1700},
	Wrapper: {"wrapper", 1000, 0, 0, 0, 200, 1500},
	Apron:   {"apron", 500, 0, 0, 0, 200, 1200},
	Bag:     {"bag", 400, 0, 380, 100, 80, 1200},
}

// Draft drafts the garment. The error is a sentence that names the measurement
// or option that cannot be.
func Draft(m Measures, o Options) (Block, error) {
	values, ok := usual[o.Shape]
	if !ok {
		return Block{}, language.Refuse("straight cut: there is no shape with the number %d",
			"gerader Schnitt: eine Form mit der Nummer %d gibt es nicht", o.Shape)
	}
	f := figures{m, o, values.name}
	for _, l := range []struct {
		name  string
		asked *float64
		usual float64
	}{{"length", &f.Length, values.length}, {"ease", &f.Ease, values.ease}, {"width", &f.Width, values.width},
		{"depth", &f.Depth, values.depth}} {
		if *l.asked < 0 {
			return Block{}, construct.Refuse("%s: the %s is %s; it cannot be negative",
				"%s: %s ist %s; das kann nicht negativ sein", f.name, l.name,
				construct.Length(*l.asked))
		}
		if *l.asked == 0 {
			*l.asked = l.usual
		}
	}
	if o.Depth == 0 {
		f.Depth = min(f.Depth, f.Width, f.Length)
	}
	if f.Length < values.shortest || f.Length > values.longest {
		return Block{}, construct.About(subject.Length).Refuse("%s: a length of %s cannot be; ask for %s to %s",
			"%s: eine Länge von %s geht nicht; verlangen Sie %s bis %s", f.name,
			construct.Length(f.Length), construct.AtLeast(values.shortest), construct.AtMost(values.longest))
	}
	switch o.Shape {
	case Kaftan:
		return f.kaftan()
	case Kimono:
		return f.kimono()
	case Wrapper:
		return f.wrapper()
	case Apron:
		return f.apron()
	}
	return f.bag()
}
