package job

import "ellwand/cmd/ellwand/strict"

// usualSkirts, from waist to hem, mm: from the shortest that is worn to the floor, which a
// tall body has 115 cm below the waist [source.CommonPractice].
var usualSkirts = usual{200, 1150}

// lengths asks about skirts that end below the floor, or hardly begin. (How far a bodice
// may go on below the waist is a limit of its draft.)
func (q *questioner) lengths() {
	for i, garment := range q.file.Garments {
		if garment.Skirt == nil || garment.Skirt.Length == "" {
			continue
		}
		if text := garment.Skirt.Length; !usualSkirts.holds(q.length(text)) {
			q.ask(strict.Top("garments").Entry(i).Key("skirt").Key("length"), "a skirt that ends %s below the waist is "+
				"unusual; %s", "ein Rock, der %s unter der Taille endet, ist ungewöhnlich; %s",
				q.work.Format(q.length(text)), orMeant(q.meant(text, usualSkirts)))
		}
	}
}
