package words

import "ellwand/fabric/cloth"

// said are the sentences of each rule of the cloth.
var said []func(c cloth.Cloth, say func(mm float64) string) []string

// register the sentences of a rule: what to chalk and to watch when the pieces are
// laid; nothing on a cloth that does not ask it.
func register(of func(c cloth.Cloth, say func(mm float64) string) []string) bool {
	said = append(said, of)
	return true
}

// Rules says what the rules of a cloth ask. Say prints a length.
func Rules(c cloth.Cloth, say func(mm float64) string) []string {
	var out []string
	for _, of := range said {
		out = append(out, of(c, say)...)
	}
	return out
}
