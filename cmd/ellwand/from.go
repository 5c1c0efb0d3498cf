package main

import (
	"bytes"
	"fmt"
	"io"
	"os"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/limit"
	"ellwand/fabric/layoutfile"
	"ellwand/pieces/language"
)

// fromFlags are layouts that somebody brings in.
type fromFlags struct {
	files []string
}

func (f *fromFlags) register(cmd *cobra.Command) {
	cmd.Flags().Var(limit.EntriesOf(&f.files, limit.Layouts), "from",
		"a layout that --layout wrote, to be used where it is shorter than what is found; for each cloth one")
}

// registerFix registers what may stay where it lies in them.
func (f *fromFlags) registerFix(cmd *cobra.Command, search *app.Search) {
	f.register(cmd)
	cmd.Flags().Var(limit.EntriesOf(&search.Fix, limit.List), "fix",
		"with --from: pieces or garments that stay where they lie there, such as those cut already; all for everything")
}

// read the layouts into a search.
func (f *fromFlags) read(search *app.Search) error {
	for _, path := range f.files {
		data, err := layoutIn(path)
		if err != nil {
			return fmt.Errorf("--from: %s cannot be read; is it the name of a layout file?", path)
		}
		if err := limit.LayoutSize.Check(language.Name("--from: "+path), len(data)); err != nil {
			return err
		}
		plan, err := layoutfile.Read(bytes.NewReader(data))
		if err != nil {
			return fmt.Errorf("--from: %s: %w", path, err)
		}
		search.From = append(search.From, plan)
	}
	return nil
}

// layoutIn a file, which is no pipe that nobody writes into, up to a byte more than is
// allowed.
func layoutIn(path string) ([]byte, error) {
	if info, err := os.Stat(path); err != nil || !info.Mode().IsRegular() {
		return nil, os.ErrInvalid
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	return io.ReadAll(io.LimitReader(file, int64(limit.LayoutSize.Most())+1))
}
