package words

import (
	"errors"
	"fmt"
	"maps"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// WhyNot says why a lay cannot be, and what would help: a line for each reason. Empty
// when it can.
func WhyNot(p lay.Plan) string { return Reasons(p.Cloth, p.Why) }

// Reasons on a cloth, a line each, after the piece that stands in the way.
func Reasons(c cloth.Cloth, all []lay.Reason) string {
	lines := make([]string, len(all))
	for i, r := range all {
		lines[i] = Reason(c, r)
		if r.Piece != "" {
			lines[i] = r.Piece + ": " + lines[i]
		}
	}
	return strings.Join(lines, "\n")
}

// Refused is an error about a cloth in words for people: its reasons and refusals as
// sentences, everything else as it is. It unwraps to the error; nil stays nil.
func Refused(c cloth.Cloth, err error) error {
	if err == nil {
		return nil
	}
	return refused{err, sentence(c, err)}
}

// refused is an error and what people read of it.
type refused struct {
	error
	text string
}

func (r refused) Error() string { return r.text }

func (r refused) Unwrap() error { return r.error }

func sentence(c cloth.Cloth, err error) string {
	switch one := err.(type) {
	case lay.Reason:
		return Reasons(c, []lay.Reason{one})
	case lay.Refusal:
		return noLay(one)
	case interface{ Unwrap() []error }:
		if !isJoined(err, one.Unwrap()) {
			break
		}
		var lines []string
		for _, each := range one.Unwrap() {
			lines = append(lines, sentence(c, each))
		}
		return strings.Join(lines, "\n")
	}
	return err.Error()
}

// isJoined tells errors that were joined, a line each, from a sentence about several.
func isJoined(err error, parts []error) bool { return err.Error() == errors.Join(parts...).Error() }

// noLay says why no lay is possible. What fits no open cloth fits none that is folded:
// the reasons of the other lays would only bury it.
func noLay(r lay.Refusal) string {
	if one := r.Plans[0]; len(r.Plans) == 1 && one.Lay != lay.Open {
		return fmt.Sprintf("it cannot be laid %s: %s", one.Lay.Way(), WhyNot(one))
	}
	var lines []string
	for _, p := range r.Plans {
		line := fmt.Sprintf("%s: %s", p.Lay, WhyNot(p))
		if p.Lay == lay.Open {
			lines = []string{line}
			break
		}
		lines = append(lines, line)
	}
	return fmt.Sprintf("no lay of %s is possible:\n%s", r.Cloth, strings.Join(lines, "\n"))
}

// Reason says why something cannot be laid, and what would help, without the piece that
// stands in the way.
func Reason(c cloth.Cloth, r lay.Reason) string {
	if say, known := explained[r.Of]; known {
		return say(c, r)
	}
	return r.Error()
}

// sentenceOf a reason on a cloth.
type sentenceOf func(c cloth.Cloth, r lay.Reason) string

// explained are the sentences of each obstacle.
var explained = map[lay.Obstacle]sentenceOf{
	lay.Told: func(_ cloth.Cloth, r lay.Reason) string { return r.Text },
}

// explain obstacles by their sentences.
func explain(sentences map[lay.Obstacle]sentenceOf) bool {
	maps.Copy(explained, sentences)
	return true
}

// always the same sentence.
func always(text string) sentenceOf { return func(cloth.Cloth, lay.Reason) string { return text } }
