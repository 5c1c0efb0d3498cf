package lay

import "ellwand/fabric/cloth"

// Refusal says that no lay of a cloth is possible that was asked for; each of its plans
// says why.
type Refusal struct {
	Cloth cloth.Cloth
	Plans []Plan
}

// Error names the cloth; people read the sentences of fabric/words.
func (r Refusal) Error() string { return "no lay of " + r.Cloth.String() + " is possible" }
