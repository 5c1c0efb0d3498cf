package draft

import (
	"maps"
	"math"
	"slices"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// allowances are the usual seam allowances in mm by what a seam is
// [source.CommonPractice]. A seam with 0 here takes that of every seam.
var allowances = []struct {
	of seams.Name
	mm float64
}{
	{seams.Every, 15},
	{seams.Shoulder, 0},
	{seams.SideSeam, 0},
	{seams.Waist, 0},
	{seams.Underarm, 0},
	{seams.Wrist, 0},
	{seams.CentreFront, 0},
	{seams.CentreBack, 20},
	{seams.Armhole, 10},
	{seams.SleeveHead, 10},
	{seams.Neck, 10},
	{seams.CollarEdge, 8},
	{seams.CuffEdge, 8},
	{seams.Join, 10},
	{seams.FacingEdge, 8},
	{seams.CasingEdge, 10},
	{seams.WristHem, 30},
	{seams.SkirtHem, 45},
	{seams.TrouserHem, 40},
	{seams.BodyHem, 30},
	{seams.NarrowHem, 15},
	{seams.PocketHem, 25},
}

// AllowanceNames lists the seams that Request.Allowances may hold. The first is
// every seam that is usually as wide as a plain seam and is not named itself.
func AllowanceNames() []seams.Name {
	names := make([]seams.Name, len(allowances))
	for i, a := range allowances {
		names[i] = a.of
	}
	return names
}

// UsualAllowance is the allowance of a seam that nothing is said of, mm; 0 for
// one that takes that of every seam.
func UsualAllowance(of seams.Name) float64 {
	for _, a := range allowances {
		if a.of == of {
			return a.mm
		}
	}
	return 0
}

func checkAllowances(asked map[seams.Name]float64) error {
	for _, name := range slices.SortedFunc(maps.Keys(asked), seams.Compare) {
		entry, mm := Entry{Section: AllowancesSection, Name: name.String()}, asked[name]
		switch {
		case !slices.Contains(AllowanceNames(), name):
			return atEntry(entry, construct.Refuse("allowances: no seam is called %q; use one of: %s",
				"Nahtzugaben: keine Naht heißt %q; es gibt: %s", name,
				seams.List(AllowanceNames())))
		case math.IsNaN(mm) || mm < 0:
			return atEntry(entry, construct.Refuse("allowances: the seam allowance on %q is %s; it cannot be negative",
				"Nahtzugaben: an %q ist sie %s; sie kann nicht negativ sein",
				name, construct.Length(mm)))
		case mm > 150:
			return atEntry(entry, construct.Refuse("allowances: the seam allowance on %q is %s; %s is the most: "+
				"check the figure and its unit",
				"Nahtzugaben: an %q ist sie %s; höchstens %s gehen: prüfen Sie Zahl und Einheit",
				name, construct.Length(mm), construct.AtMost(150)))
		}
	}
	return nil
}

// allow gives every edge of a piece its allowance: that asked for, or the
// usual one. The fold edge has none, nor has a raw edge: a bias strip's.
func allow(piece pieces.Piece, asked map[seams.Name]float64) pieces.Piece {
	edges := slices.Clone(piece.Edges)
	for i, edge := range edges {
		edges[i].Allowance = AllowanceOf(edge.Name.Role(), asked)
		if edge.Name == piece.Fold {
			edges[i].Allowance = 0
		}
	}
	piece.Edges = edges
	return piece
}

// AllowanceOf a seam, whatever its side, in mm: that asked for, or the usual one.
func AllowanceOf(role seams.Name, asked map[seams.Name]float64) float64 {
	if role == seams.RawEdge {
		return 0
	}
	for _, a := range allowances {
		if role != a.of {
			continue
		}
		if mm, ok := asked[a.of]; ok {
			return mm
		}
		if a.mm > 0 {
			return a.mm
		}
	}
	if mm, ok := asked[seams.Every]; ok {
		return mm
	}
	return allowances[0].mm
}
