package words

import (
	"fmt"
	"slices"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/marks"
)

// Notes are the cautions about a plan, a sentence each.
func Notes(p lay.Plan) []string {
	var out []string
	for _, note := range p.Notes {
		out = append(out, noted(p, note))
	}
	return out
}

func noted(p lay.Plan, note lay.Note) string {
	names := strings.Join(note.Pieces, ", ")
	switch note.Of {
	case lay.CutOnce:
		return fmt.Sprintf("The folded cloth gives two of everything, and of %s only one is wanted in its place on the "+
			"plan: "+
			"leave that place whole until the rest is cut, then open the cloth there and cut it from the lower layer, "+
			"which lies right side up.", names)
	case lay.LittleMore:
		more := "only " + p.Cloth.Say(note.Length) + " more"
		if note.Length < leastSaid {
			more = "no more"
		}
		return fmt.Sprintf("The length to buy is %s than the lay takes. Straightening the cut ends takes %s: buy a "+
			"little more, "+
			"unless the shop cuts along a thread.", more, Straightening(p.Cloth))
	case lay.LittleSpare:
		return fmt.Sprintf("Only %s of the length are to spare, and straightening the cut ends takes %s: "+
			"check that both ends are cut along a thread.", p.Cloth.Say(note.Length), Straightening(p.Cloth))
	case lay.Unmatched:
		return "Not everything can be matched at once: " + strings.Join(unmatched(p), "; ") + "."
	case lay.Unsure:
		return fmt.Sprintf("The job calls %s approximate, so that \"never below\" is reckoned without it: "+
			"the pieces themselves may lie in less.", names)
	case lay.LaidByHand:
		return "Laid by hand, and kept so: " + names + ". All else is laid round it, so that the lay may be longer than " +
			"one that is free."
	case lay.OneHanded:
		return "All the same way up, so that there is no left one: " + names + ". Say that it is a pair where a right " +
			"one and a left one are meant (pair: yes)."
	case lay.AllowanceUnknown:
		return "The seam allowances of " + names + " are not known: the outlines are cut as they are drawn, and nothing is " +
			"added."
	case lay.InARow:
		return "The plan shows the remnants in a row, a bar between them; lay each by itself, its cut end on your left, " +
			"and measure along from there."
	}
	return note.Text
}

// leastSaid, mm, is worth a figure [source.OwnChoice].
const leastSaid = 0.5

// Straightening says what it takes for both cut ends [source.CommonPractice].
func Straightening(c cloth.Cloth) string {
	if c.Inches {
		return "3/4 to 2 in"
	}
	return "2 to 5 cm"
}

// unmatched says of each piece once what a plan does not keep on the repeat.
func unmatched(p lay.Plan) []string {
	var out []string
	for _, match := range p.Dropped {
		way, name := "along the warp", p.Asked[match.Pieces[0]].Name
		if match.Across {
			way = "across"
		}
		if match.Name == marks.None {
			out = append(out, fmt.Sprintf("right and left of %s cannot be matched %s as well as the other points", name, way))
		} else {
			out = append(out, fmt.Sprintf("%s of %s cannot be matched %s as well as the others", match.Name, name, way))
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}
