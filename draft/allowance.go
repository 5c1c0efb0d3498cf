package draft

import (
	"maps"
	"math"
	"slices"
	"strings"

	"ellwand/draft/construct"
	"ellwand/pieces"
)

// allowances are the usual seam allowances in mm by the name of a seam
// [source.CommonPractice]. A seam with 0 here takes that of "seams".
var allowances = []struct {
	name string
	mm   float64
}{
	{"seams", 15},
	{"shoulder", 0},
	{"side", 0},
	{"waist", 0},
	{"underarm", 0},
	{"wrist", 0},
	{"centre front", 0},
	{"centre back", 20},
	{"armhole", 10},
	{"sleeve head", 10},
	{"neck", 10},
	{"collar edge", 8},
	{"cuff edge", 8},
	{"join", 10},
	{"facing edge", 8},
	{"casing edge", 10},
	{"wrist hem", 30},
	{"skirt hem", 45},
	{"trouser hem", 40},
	{"body hem", 30},
	{"narrow hem", 15},
	{"pocket hem", 25},
}

// AllowanceNames lists the names that Request.Allowances may hold. "seams" is
// every seam that is usually as wide as a plain seam and is not named itself.
func AllowanceNames() []string {
	names := make([]string, len(allowances))
	for i, a := range allowances {
		names[i] = a.name
	}
	return names
}

// UsualAllowance is the allowance of a seam that nothing is said of, mm; 0 for
// one that takes that of "seams".
func UsualAllowance(name string) float64 {
	for _, a := range allowances {
		if a.name == name {
			return a.mm
		}
	}
	return 0
}

func checkAllowances(asked map[string]float64) error {
	for _, name := range slices.Sorted(maps.Keys(asked)) {
		place, mm := Place{Section: AllowancesSection, Name: name}, asked[name]
		switch {
		case !slices.Contains(AllowanceNames(), name):
			return atPlace(place, construct.Refuse("allowances: no seam is called %q; use one of: %s", name, strings.Join(AllowanceNames(), ", ")))
		case math.IsNaN(mm) || mm < 0:
			return atPlace(place, construct.Refuse("allowances: the seam allowance on %q is %s; it cannot be negative", name, construct.Length(mm)))
		case mm > 150:
			return atPlace(place, construct.Refuse("allowances: the seam allowance on %q is %s; %s is the most: check the figure and its unit", name, construct.Length(mm), construct.AtMost(150)))
		}
	}
	return nil
}

// allow gives every edge of a piece its allowance: that asked for, or the
// usual one. The fold edge has none, nor has a raw edge: a bias strip's.
func allow(piece pieces.Piece, asked map[string]float64) pieces.Piece {
	edges := slices.Clone(piece.Edges)
	for i, edge := range edges {
		edges[i].Allowance = allowanceOf(construct.SeamOf(edge.Name), asked)
		if edge.Name == piece.Fold {
			edges[i].Allowance = 0
		}
	}
	piece.Edges = edges
	return piece
}

func allowanceOf(seam string, asked map[string]float64) float64 {
	if strings.HasSuffix(seam, "raw edge") {
		return 0
	}
	for _, a := range allowances {
		if seam != a.name && !strings.HasSuffix(seam, " "+a.name) {
			continue
		}
		if mm, ok := asked[a.name]; ok {
			return mm
		}
		if a.mm > 0 {
			return a.mm
		}
	}
	if mm, ok := asked["seams"]; ok {
		return mm
	}
	return allowances[0].mm
}
