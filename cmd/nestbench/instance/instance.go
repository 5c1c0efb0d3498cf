// Package instance reads instances of the open irregular strip packing
// collections (JSON, as in the repository OR-Datasets, doi
// 10.33965/ac2019_201912L016) and writes layouts for them.
package instance

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math"
	"os"

	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/limit"
	"ellwand/nest/layout"
	"ellwand/pieces/language"
)

// Instance is a set of outlines to lay on a strip of fixed width.
type Instance struct {
	Name    string
	Problem layout.Problem
}

// Pieces is the number of outlines to lay, copies counted.
func (in Instance) Pieces() int {
	n := 0
	for _, item := range in.Problem.Items {
		n += item.Copies
	}
	return n
}

// Read reads the instance at a path. The error says what is wrong with it.
func Read(path string) (Instance, error) {
	data, err := readAtMost(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return Instance{}, fmt.Errorf("there is no file %s; check the name", path)
	case err == nil && len(data) > limit.InstanceSize.Most():
		return Instance{}, limit.InstanceSize.Check(language.Name(path), len(data))
	case err != nil:
		return Instance{}, fmt.Errorf("%s cannot be read; check that it is a file, and its permissions", path)
	}
	in, err := Parse(data)
	if err != nil {
		return Instance{}, fmt.Errorf("%s: %w", path, err)
	}
	return in, nil
}

// readAtMost reads a file, a pipe or a device, and no more than a byte above what
// an instance may have.
func readAtMost(path string) ([]byte, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	return io.ReadAll(io.LimitReader(file, int64(limit.InstanceSize.Most())+1))
}

// Parse reads an instance from its text.
func Parse(data []byte) (Instance, error) {
	var f file
	if err := json.Unmarshal(data, &f); err != nil {
		return Instance{}, reworded(data, err)
	}
	if err := checkStrip(f.Strip.Height); err != nil {
		return Instance{}, err
	}
	if len(f.Items) == 0 {
		return Instance{}, fmt.Errorf("there are no Items to lay")
	}
	if err := limit.Items.Check(language.Name("Items"), len(f.Items)); err != nil {
		return Instance{}, err
	}
	if err := limit.Text.Check(language.Name("Name"), len(f.Name)); err != nil {
		return Instance{}, err
	}
	problem := layout.Problem{Width: f.Strip.Height}
	vertices, pieces := 0, 0
	for i, item := range f.Items {
		if err := checkCounts(item); err != nil {
			return Instance{}, fmt.Errorf("item %d: %w", i, err)
		}
		if t := item.Shape.Type; t != "" && t != "SimplePolygon" {
			return Instance{}, fmt.Errorf("item %d: shape %q is not supported; use SimplePolygon", i, t)
		}
		ring, err := ringOf(item.Shape.Data)
		if err == nil {
			err = checkOutline(ring, f.Strip.Height)
		}
		if err != nil {
			return Instance{}, fmt.Errorf("item %d: %w", i, err)
		}
		vertices, pieces = vertices+len(ring)*item.Demand, pieces+item.Demand
		if err := limit.VerticesOfAll.Check(language.Name("the Items"), vertices); err != nil {
			return Instance{}, err
		}
		if err := limit.Demand.Check(language.Name("the Demand of all items together"), pieces); err != nil {
			return Instance{}, err
		}
		problem.Items = append(problem.Items, layout.Item{
			Name:    fmt.Sprintf("item %d", i),
			Outline: ring,
			Copies:  item.Demand,
			Turns:   turnsOf(item.AllowedOrientations),
		})
	}
	return Instance{Name: f.Name, Problem: problem}, nil
}

func ringOf(data json.RawMessage) (orb.Ring, error) {
	var points [][]float64
	if err := json.Unmarshal(data, &points); err != nil {
		return nil, fmt.Errorf("its Data must be a ring of [x, y] points")
	}
	ring := make(orb.Ring, 0, len(points)+1)
	for _, p := range points {
		if len(p) != 2 {
			return nil, fmt.Errorf("its Data must be a ring of [x, y] points; one has %d numbers", len(p))
		}
		ring = append(ring, orb.Point{p[0], p[1]})
	}
	if len(ring) < 3 {
		return ring, nil // refused with the rest
	}
	return closed(ring), nil
}

// turnsOf gives the turns of an item; one that lists none stays as it is.
func turnsOf(degrees []float64) []layout.Turn {
	if len(degrees) == 0 {
		return []layout.Turn{{}}
	}
	turns := make([]layout.Turn, len(degrees))
	for i, d := range degrees {
		turns[i] = layout.Turn{Degrees: math.Mod(d, 360)}
	}
	return turns
}

func reworded(data []byte, err error) error {
	switch e := err.(type) {
	case *json.SyntaxError:
		line := 1
		for _, c := range data[:min(int(e.Offset), len(data))] {
			if c == '\n' {
				line++
			}
		}
		return fmt.Errorf("line %d: this is not JSON; is it an instance file?", line)
	case *json.UnmarshalTypeError:
		return fmt.Errorf("%s holds a %s where an instance has another kind of value", e.Field, e.Value)
	}
	return fmt.Errorf("this is not an instance in JSON")
}
