package svgin

import (
	"math"
	"strings"

	"ellwand/pieces"
	"ellwand/pieces/linework"
)

// mostTransforms one after the other in one attribute [source.OwnChoice].
const mostTransforms = 100

// transform of an element: the steps as they stand, the last one done first.
func transform(text string) (pieces.Motion, error) {
	out := pieces.Identity()
	rest := strings.Trim(text, " \t\r\n,")
	if rest == "none" {
		return out, nil
	}
	for n := 0; rest != ""; n++ {
		name, after, ok := strings.Cut(rest, "(")
		list, next, closed := strings.Cut(after, ")")
		if !ok || !closed || n > mostTransforms {
			return out, &linework.Fault{Of: linework.NoTransform, Text: shown(text)}
		}
		values, err := numbers(list)
		if err != nil {
			return out, inAttribute("transform", err)
		}
		step, ok := stepOf(strings.TrimSpace(name), values)
		if !ok {
			return out, &linework.Fault{Of: linework.NoTransform, Text: shown(text)}
		}
		out = step.Then(out)
		rest = strings.TrimLeft(next, " \t\r\n,")
	}
	return out, nil
}

func shown(text string) string { return text[:min(len(text), 60)] }

func stepOf(name string, v []float64) (m pieces.Motion, ok bool) {
	m = pieces.Identity()
	n := len(v)
	switch {
	case name == "matrix" && n == 6:
		return pieces.Motion{A: v[0], C: v[1], B: v[2], D: v[3], E: v[4], F: v[5]}, true
	case name == "translate" && n == 1:
		return pieces.Move(v[0], 0), true
	case name == "translate" && n == 2:
		return pieces.Move(v[0], v[1]), true
	case name == "scale" && n == 1:
		return pieces.Scale(v[0]), true
	case name == "scale" && n == 2:
		return pieces.Motion{A: v[0], D: v[1]}, true
	case name == "rotate" && n == 1:
		return pieces.Turn(v[0]), true
	case name == "rotate" && n == 3:
		return pieces.Move(-v[1], -v[2]).Then(pieces.Turn(v[0])).Then(pieces.Move(v[1], v[2])), true
	case name == "skewX" && n == 1:
		m.B = math.Tan(v[0] * math.Pi / 180)
		return m, true
	case name == "skewY" && n == 1:
		m.C = math.Tan(v[0] * math.Pi / 180)
		return m, true
	}
	return m, false
}
