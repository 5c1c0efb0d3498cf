package job

import "ellwand/cmd/ellwand/strict"

// Lengths from the waist down, finished, mm: from the shortest that is worn to the floor,
// which a tall body has 115 cm below the waist [source.CommonPractice].
var (
	usualSkirts     = usual{200, 1150}
	usualBelowWaist = usual{20, 1150}
)

// lengths asks about hems that lie below the floor, or nearly at the waist.
func (q *questioner) lengths() {
	for i, garment := range q.file.Garments {
		path := strict.Top("garments").Entry(i)
		if garment.Skirt != nil {
			q.fromWaist(path.Key("skirt").Key("length"), "a skirt", garment.Skirt.Length, usualSkirts)
		}
		if garment.Bodice != nil {
			q.fromWaist(path.Key("bodice").Key("below_waist"), "a bodice", garment.Bodice.BelowWaist, usualBelowWaist)
		}
	}
}

func (q *questioner) fromWaist(path Path, what string, text Measure, u usual) {
	if text != "" && !u.holds(q.length(text)) {
		q.ask(path, "%s that ends %s below the waist is unusual; %s", what, q.work.Format(q.length(text)),
			orMeant(q.meant(text, u)))
	}
}
