package words

import (
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/language"
	"ellwand/pieces/marks"
)

// tasks are what pieces are named for.
var tasks = map[lay.Task]language.Sentence{
	lay.ToGoOneWay:       language.Say("to go one way", "in einer Richtung liegen"),
	lay.ToBeCentred:      language.Say("to be centred", "mittig liegen"),
	lay.ToHangSideBySide: language.Say("to hang side by side", "daneben hängen"),
}

// callTask says in words what a rule names pieces for.
func callTask(of lay.Task, english, german string) bool {
	tasks[of] = language.Say(english, german)
	return true
}

// NoPiece says that no piece has the name that one is named by for a task.
func NoPiece(name string, task lay.Task) language.Sentence {
	return language.Say("there is no piece %q %s; name a piece that is cut from it",
		"ein Teil %q gibt es nicht, das %s soll; nennen Sie eines, das daraus geschnitten wird",
		name, tasks[task])
}

// NoMatch says that nothing is matched by some words, and what can be.
func NoMatch(asked string, known []marks.Name) language.Sentence {
	if len(known) == 0 {
		return language.Say("nothing joins these pieces by %q, nor by anything else; leave match out, or name the pieces "+
			"that hang side by side",
			"diese Teile verbindet weder %q noch etwas anderes; lassen Sie das Anpassen weg, oder "+
				"nennen Sie die Teile, die nebeneinander hängen", asked)
	}
	words := make([]string, len(known))
	for i, name := range known {
		words[i] = name.String()
	}
	return language.Say("no pieces are joined by %q; name one of: %s",
		"durch %q sind keine Teile verbunden; es gibt: %s", asked, strings.Join(words, ", "))
}

var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.NothingToCut: func(c cloth.Cloth, _ lay.Reason) language.Sentence {
		return language.Say("%s: there is nothing to cut from it; add a piece, or leave the cloth out",
			"%s: daraus ist nichts zu schneiden; nehmen Sie ein Teil auf, oder lassen Sie den Stoff weg",
			clothNamed(c))
	},
	lay.NoSuchPiece: func(c cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("%s: %s", "%s: %s", clothNamed(c), NoPiece(strings.Join(r.Pieces, ", "), r.Task))
	},
	lay.NotJoined: func(c cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("%s: %s", "%s: %s", clothNamed(c), NoMatch(r.Point.String(), r.Points))
	},
	lay.NamedTwice: always("two pieces have this name in the same garment and size; give one another name, or raise the "+
		"cut count",
		"zwei Teile heißen im selben Kleidungsstück und in derselben Größe so; geben Sie einem "+
			"einen anderen Namen, oder erhöhen Sie die Zahl der Zuschnitte"),
})
