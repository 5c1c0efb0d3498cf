package app

import (
	"slices"
	"strconv"
	"strings"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/measure"
)

// Answers are what somebody says of pieces that were found, each for all of them
// ("2") or for one by its number or its name ("3=2", "cuff=2"); of several for one
// piece the last holds, and one for it before one for all.
type Answers struct {
	Name, Size, Cloth, Cut, Pair, Fold, Grain, Allowance, Kind []string
}

// of a piece is what was answered for it; false for nothing.
func of(entries []string, f Found) (text string, said bool) {
	for _, entry := range entries {
		key, value, keyed := strings.Cut(entry, "=")
		switch {
		case !keyed && !said:
			text = strings.TrimSpace(entry)
		case keyed && isPiece(key, f):
			text, said = strings.TrimSpace(value), true
		}
	}
	return text, text != ""
}

func isPiece(key string, f Found) bool {
	key = strings.TrimSpace(key)
	return key == strconv.Itoa(f.Number) || f.Name != "" && strings.EqualFold(key, f.Name)
}

// Add an answer for a piece.
func (a *Answers) Add(q found.Question, number int, text string) {
	list := a.list(q)
	*list = append(*list, strconv.Itoa(number)+"="+text)
}

func (a *Answers) list(q found.Question) *[]string {
	return map[found.Question]*[]string{found.AskName: &a.Name, found.AskCut: &a.Cut, found.AskPair: &a.Pair,
		found.AskFold: &a.Fold, found.AskGrain: &a.Grain, found.AskAllowance: &a.Allowance, found.AskCloth: &a.Cloth,
		found.AskSize: &a.Size}[q]
}

// Check refuses answers for pieces that there are not.
func (a Answers) Check(all []Found) error {
	for _, list := range []struct {
		argument Argument
		entries  []string
	}{{ArgumentName, a.Name}, {ArgumentSize, a.Size}, {ArgumentCloth, a.Cloth}, {ArgumentCut, a.Cut},
		{ArgumentPair, a.Pair},
		{ArgumentFold, a.Fold}, {ArgumentGrain, a.Grain}, {ArgumentAllowance, a.Allowance}, {ArgumentKind, a.Kind}} {
		for _, entry := range list.entries {
			key, _, keyed := strings.Cut(entry, "=")
			if keyed && !slices.ContainsFunc(all, func(f Found) bool { return isPiece(key, f) }) {
				return refuse("%s: there is no piece %q; they are numbered from 1 to %d", list.argument, key, len(all))
			}
		}
	}
	return nil
}

// FoldAnswers are the answers that can be given to which side of a piece lies on the fold: that
// with the longest straight edge first, "none" last.
func FoldAnswers(f Found) []string {
	var out []string
	for _, side := range append(f.FoldSides(), found.NoFold) {
		out = append(out, side.String())
	}
	return out
}

// Said is what the answers say of a piece.
func (a Answers) Said(f Found) (found.Said, error) {
	var out found.Said
	out.Name, _ = of(a.Name, f)
	out.Size, _ = of(a.Size, f)
	out.Cloth, _ = of(a.Cloth, f)
	if text, said := of(a.Cut, f); said {
		n, err := strconv.Atoi(text)
		if err != nil || n < 1 || n > 1000 {
			return out, refuse("%s %q: how many are cut is a whole number from 1 to 1000", ArgumentCut, text)
		}
		out.Cut = n
	}
	if text, said := of(a.Pair, f); said {
		switch strings.ToLower(text) {
		case "yes", "y", "true":
			out.Pair = found.Yes
		case "no", "n", "false":
			out.Pair = found.No
		default:
			return out, refuse("%s %q: write yes or no, for one piece with its number before it: 2=yes", ArgumentPair, text)
		}
	}
	if text, said := of(a.Fold, f); said {
		out.Fold = found.Side(max(0, slices.Index(out.Fold.Words(), strings.ToLower(text))))
		if out.Fold == found.FoldAsFound {
			return out, refuse("%s %q: write which side of the piece as drawn lies on the fold: left, right, top, bottom; or "+
				"none", ArgumentFold, text)
		}
	}
	if text, said := of(a.Grain, f); said {
		out.Grain = found.Lie(max(0, slices.Index(out.Grain.Words(), strings.ToLower(text))))
		if out.Grain == found.GrainAsFound {
			return out, refuse("%s %q: write up (the grainline runs up the drawing), across, bias or either", ArgumentGrain,
				text)
		}
	}
	if text, said := of(a.Kind, f); said {
		at := slices.Index(pieces.Shell.Words(), strings.ToLower(text))
		if at < 0 {
			return out, refuse("%s %q: write one of %s", ArgumentKind, text, strings.Join(pieces.Shell.Words(), ", "))
		}
		out.Kind, out.KindSaid = pieces.Kind(at), true
	}
	return out, a.allowance(f, &out)
}

func (a Answers) allowance(f Found, out *found.Said) error {
	text, said := of(a.Allowance, f)
	if !said {
		return nil
	}
	rest, included := strings.CutPrefix(strings.ToLower(text), "included")
	rest = strings.TrimSpace(rest)
	switch {
	case rest == "unknown", included && rest == "":
		out.Allowance.How = found.AllowanceUnknown
		return nil
	case included:
		out.Allowance.How = found.AllowanceIncluded
	default:
		out.Allowance.How = found.AllowanceAdded
	}
	width, err := measure.Parse(rest, measure.Millimetre)
	hasUnit := rest != "" && !strings.Contains("0123456789", rest[len(rest)-1:])
	if err != nil || width < 0 || width > 500 || !hasUnit && width != 0 {
		return refuse("%s %q: write what the outline has of its allowance, with its unit: included 1.5 cm (the outline is "+
			"the cutting line), 1.5 cm (it is to be added to the outline), or unknown", ArgumentAllowance, text)
	}
	out.Allowance.Width = float64(width)
	return nil
}

// Copy of the answers, that can be added to apart from them.
func (a Answers) Copy() Answers {
	return Answers{Name: slices.Clone(a.Name), Size: slices.Clone(a.Size), Cloth: slices.Clone(a.Cloth),
		Cut: slices.Clone(a.Cut), Pair: slices.Clone(a.Pair), Fold: slices.Clone(a.Fold), Grain: slices.Clone(a.Grain),
		Allowance: slices.Clone(a.Allowance), Kind: slices.Clone(a.Kind)}
}
