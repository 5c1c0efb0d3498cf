package layoutfile

import (
	"encoding/json"
	"fmt"
	"io"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/pieces"
	"ellwand/pieces/seams"
	"ellwand/pieces/text"
)

// Write writes the layout of a plan. It refuses a plan that is not possible.
func Write(w io.Writer, plan lay.Plan) error {
	file, err := Of(plan)
	if err != nil {
		return err
	}
	encoded, err := json.MarshalIndent(file, "", " ")
	if err != nil {
		return err
	}
	_, err = w.Write(append(text.JSON(encoded), '\n'))
	return err
}

// Of is the layout of a plan. It fails when the plan is not possible, or not proven.
func Of(plan lay.Plan) (File, error) {
	cloth := plan.Cloth
	if !plan.Possible() {
		return File{}, fmt.Errorf("the %s lay of %s has no layout: it is not possible", plan.Lay, cloth.Name)
	}
	if err := check.Plan(plan, plan.Asked); err != nil {
		return File{}, err
	}
	taken, err := rules.FlawsTaken(plan)
	if err != nil {
		return File{}, err
	}
	parts, err := partsOf(plan)
	if err != nil {
		return File{}, err
	}
	asked, err := askedOf(plan)
	if err != nil {
		return File{}, err
	}
	return File{
		Version: Version, Cloth: cloth.Name, Lay: plan.Lay.String(), Plies: plan.Plies,
		Width: plan.Width, Length: plan.Length, Bound: plan.Bound, Taken: plan.Taken,
		Amount:     amountOf(plan),
		FoldedIn:   plan.FoldedIn,
		ClothWidth: cloth.WidthLaid(), Selvedge: cloth.Selvedge, Nap: cloth.Nap.String(), Alike: cloth.Alike,
		Gap: cloth.Gap, Tilt: 100 * cloth.Tilt, Repeat: repeatOf(plan), Fixed: fixedOf(plan), ClothFlaws: flawsOf(taken),
		Flaws: append([]orb.Ring{}, plan.Zones...), Parts: parts, Asked: asked, Pieces: laidOf(plan),
	}, nil
}

func partsOf(plan lay.Plan) ([]Part, error) {
	out := []Part{}
	for _, p := range plan.Beds {
		part := Part{X: p.X, End: p.X + p.Length, Y: p.Y, Width: p.Width, Folds: foldsOf(plan.Lay, p), Plies: []Ply{}}
		for _, ply := range p.OnCloth {
			flaws, err := rules.FlawsIn(plan, p, ply)
			if err != nil {
				return nil, err
			}
			part.Plies = append(part.Plies, plyOf(ply, flaws))
		}
		out = append(out, part)
	}
	return out, nil
}

func foldsOf(kind lay.Kind, p lay.Bed) []Fold {
	out := []Fold{}
	if kind == lay.FoldedAcross {
		out = append(out, Fold{Runs: "across", At: p.X})
	}
	if p.FoldLow {
		out = append(out, Fold{Runs: "along", At: p.Y})
	}
	if p.FoldHigh {
		out = append(out, Fold{Runs: "along", At: p.Y + p.Width})
	}
	return out
}

func plyOf(ply lay.Ply, flaws []cloth.Flaw) Ply {
	m := ply.ToCloth
	out := Ply{
		RightSide: "up", FromY: ply.Low, ToY: ply.High,
		OnCloth: OnCloth{X: m.E, SignX: sign(m.A), Y: m.F, SignY: sign(m.D)},
		Flaws:   flawsOf(flaws),
	}
	if ply.Upper {
		out.RightSide = "down"
	}
	return out
}

func sign(v float64) int {
	if v < 0 {
		return -1
	}
	return 1
}

func flawsOf(all []cloth.Flaw) []Flaw {
	out := []Flaw{}
	for _, flaw := range all {
		out = append(out, Flaw{Name: flaw.Name, Outline: flaw.Outline})
	}
	return out
}

func repeatOf(plan lay.Plan) *Repeat {
	repeat := plan.Cloth.Repeat
	if repeat.IsPlain() {
		return nil
	}
	out := &Repeat{
		Along: repeat.Along, Across: repeat.Across, Even: repeat.Even, Matches: []Match{},
		CentreLine: repeat.CentreLine, Centred: pointsOf(rules.Centres(plan)),
	}
	for _, match := range plan.Matches {
		out.Matches = append(out.Matches,
			Match{Name: match.Name.String(), Way: way(match.Across), Points: pointsOf(rules.PointsOf(plan, match))})
	}
	return out
}

func way(across bool) string {
	if across {
		return "across"
	}
	return "along"
}

func fixedOf(plan lay.Plan) []Fixed {
	out := []Fixed{}
	for _, f := range rules.FixedPoints(plan) {
		out = append(out, Fixed{
			PiecePoint: PiecePoint{Piece: f.Piece, At: f.At}, Way: way(f.Across), From: f.From, To: f.To, Period: f.Period,
		})
	}
	return out
}

func pointsOf(all []rules.PiecePoint) []PiecePoint {
	out := []PiecePoint{}
	for _, p := range all {
		out = append(out, PiecePoint{Piece: p.Piece, At: p.At})
	}
	return out
}

// outlineTolerance, mm, of the outlines of the pieces asked: that of those
// laid [source.OwnChoice].
const outlineTolerance = 0.1

// grainLies in the order of the constants of pieces.GrainLie.
var grainLies = []string{"along", "across", "bias", "either"}

func askedOf(plan lay.Plan) ([]Asked, error) {
	out := []Asked{}
	for _, piece := range rules.AsCut(plan) {
		outline, err := piece.CuttingOutline(outlineTolerance)
		if err != nil {
			return nil, err
		}
		out = append(out, Asked{
			Name: piece.Name, Garment: piece.Garment, Size: piece.Size, Count: piece.Cut, Pair: piece.Pair,
			Nap: plan.Cloth.NapOf(piece.Name).String(), GrainLie: grainLies[piece.Grain.Lie],
			Grain: [2]orb.Point{piece.Grain.From, piece.Grain.To}, Fold: foldOf(piece), Outline: outline,
		})
	}
	return out, nil
}

func foldOf(piece pieces.Piece) []orb.Point {
	edge, ok := piece.Edge(piece.Fold)
	if piece.Fold == seams.None || !ok {
		return nil
	}
	return []orb.Point{edge.Path.Start(), edge.Path.End()}
}

func laidOf(plan lay.Plan) []Laid {
	out := []Laid{}
	for _, l := range plan.Pieces {
		index := slices.IndexFunc(plan.Asked, func(p pieces.Piece) bool {
			return p.Name == l.Name && p.Garment == l.Garment && p.Size == l.Size
		})
		laid := Laid{
			Name: l.Name, Garment: l.Garment, Size: l.Size, Copy: l.Copy, Mirrored: l.Mirrored,
			Turn: l.Turn, OnFold: l.OnFold, Lower: l.FromLower, X: l.X, Y: l.Y, Piece: index, Part: l.Bed,
			Opened: index >= 0 && plan.Asked[index].Fold != seams.None && !l.OnFold, Outline: l.Outline,
			Turnings: []Turning{},
		}
		for _, way := range l.Turnings {
			if turning := (Turning{Turn: way.Degrees, Mirrored: way.Mirrored}); !slices.Contains(laid.Turnings, turning) {
				laid.Turnings = append(laid.Turnings, turning)
			}
		}
		out = append(out, laid)
	}
	return out
}
