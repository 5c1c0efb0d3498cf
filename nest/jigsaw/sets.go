package jigsaw

import (
	"fmt"

	"ellwand/nest/layout"
)

// Set is a puzzle of which many copies may be laid, with how it was made.
type Set struct {
	Name string
	Puzzle
}

// kind is how a set is made: columns along and rows across of a rectangle of the
// length and width, in so many turns by 360 / turns degrees.
type kind struct {
	cut           Cut
	columns, rows int
	length, width float64
	turns, copies int
}

// kinds of the sets, our own choice: few pieces and many, a strip wider and narrower
// than the pieces are long, pieces ten times as long as wide, two turns and four, one
// copy and up to twelve.
var kinds = []kind{
	{Straight, 3, 2, 900, 500, 2, 1},
	{Straight, 4, 3, 1400, 900, 4, 1},
	{Straight, 2, 7, 1600, 700, 2, 1},
	{Straight, 3, 2, 700, 500, 2, 6},
	{Slanted, 3, 2, 900, 500, 2, 1},
	{Slanted, 3, 3, 1000, 600, 4, 1},
	{Slanted, 4, 3, 800, 1500, 2, 1},
	{Slanted, 2, 7, 1900, 700, 4, 1},
	{Slanted, 3, 2, 600, 500, 2, 12},
	{Curved, 3, 2, 900, 500, 2, 1},
	{Curved, 3, 3, 1000, 600, 4, 1},
	{Curved, 5, 2, 1500, 400, 2, 1},
	{Curved, 7, 2, 700, 1800, 4, 1},
	{Curved, 3, 2, 600, 500, 2, 8},
	{Tongued, 3, 2, 900, 500, 2, 1},
	{Tongued, 4, 3, 1200, 900, 4, 1},
	{Tongued, 3, 2, 700, 600, 2, 5},
	{Chopped, 3, 3, 1000, 600, 2, 1},
	{Chopped, 7, 2, 900, 1400, 4, 1},
	{Chopped, 3, 2, 500, 600, 4, 10},
}

// Sets are the puzzles that the search is measured on. The same seed makes the same
// sets; another makes others of the same kinds.
func Sets(seed uint64) []Set {
	sets := make([]Set, len(kinds))
	for i, k := range kinds {
		sets[i] = k.set(uint64(len(kinds))*seed + uint64(i))
	}
	return sets
}

func (k kind) set(seed uint64) Set {
	puzzle := New(seed, k.cut, k.length, k.width, k.columns, k.rows)
	name := fmt.Sprintf("%s %dx%d, %gx%g, %d turns", k.cut, k.columns, k.rows, k.length, k.width, k.turns)
	if k.copies > 1 {
		name += fmt.Sprintf(", %d copies", k.copies)
	}
	return Set{Name: name, Puzzle: puzzle.repeated(k.copies).turned(seed, k.turns)}
}

// repeated asks for so many copies of every piece: the rectangles lie one behind the
// other.
func (p Puzzle) repeated(copies int) Puzzle {
	length := p.Solved.Length
	solved := layout.Layout{Length: float64(length * float64(copies))}
	for c := range copies {
		for _, at := range p.Solved.Placements {
			at.Copy, at.X = c, at.X+float64(float64(c)*length)
			solved.Placements = append(solved.Placements, at)
		}
	}
	for i := range p.Problem.Items {
		p.Problem.Items[i].Copies = copies
	}
	p.Solved = solved
	return p
}

// turned allows so many turns, and draws each piece in one of them.
func (p Puzzle) turned(seed uint64, turns int) Puzzle {
	step := 360 / float64(turns)
	allowed := make([]layout.Turn, turns)
	for t := range allowed {
		allowed[t].Degrees = float64(float64(t) * step)
	}
	for i := range p.Problem.Items {
		item := &p.Problem.Items[i]
		item.Turns = allowed
		drawn := (i + int(seed%7)) % turns
		item.Outline = layout.Turned(item.Outline, allowed[drawn].Degrees, false)
		for k := range p.Solved.Placements {
			if at := &p.Solved.Placements[k]; at.Item == i {
				at.Turn = (turns - drawn) % turns
			}
		}
	}
	return p
}
