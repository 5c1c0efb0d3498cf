package words

import (
	"fmt"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/marks"
)

// tasks are what pieces are named for.
var tasks = map[lay.Task]string{
	lay.ToGoOneWay:       "to go one way",
	lay.ToBeCentred:      "to be centred",
	lay.ToHangSideBySide: "to hang side by side",
}

// callTask says in words what a rule names pieces for.
func callTask(of lay.Task, words string) bool {
	tasks[of] = words
	return true
}

// NoPiece says that no piece has the name that one is named by for a task.
func NoPiece(name string, task lay.Task) string {
	return fmt.Sprintf("there is no piece %q %s; name a piece that is cut from it", name, tasks[task])
}

// NoMatch says that nothing is matched by some words, and what can be.
func NoMatch(asked string, known []marks.Name) string {
	if len(known) == 0 {
		return fmt.Sprintf("nothing joins these pieces by %q, nor by anything else; leave match out, or name the pieces "+
			"that hang side by side", asked)
	}
	words := make([]string, len(known))
	for i, name := range known {
		words[i] = name.String()
	}
	return fmt.Sprintf("no pieces are joined by %q; name one of: %s", asked, strings.Join(words, ", "))
}

var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.NothingToCut: func(c cloth.Cloth, _ lay.Reason) string {
		return fmt.Sprintf("%s: there is nothing to cut from it; add a piece, or leave the cloth out", c)
	},
	lay.NoSuchPiece: func(c cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("%s: %s", c, NoPiece(strings.Join(r.Pieces, ", "), r.Task))
	},
	lay.NotJoined: func(c cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("%s: %s", c, NoMatch(r.Point.String(), r.Points))
	},
	lay.NamedTwice: always("two pieces have this name in the same garment and size; give one another name, or raise the " +
		"cut count"),
})
