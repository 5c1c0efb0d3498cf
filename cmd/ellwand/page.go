package main

import (
	"context"
	"fmt"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/page"
)

// pageOptions are the options of the page command.
type pageOptions struct {
	searchFlags
	port      int
	noBrowser bool
	stay      bool
}

func newPage(e *env) *cobra.Command {
	var o pageOptions
	cmd := &cobra.Command{
		Use:   "page [FOLDER]",
		Short: "Open the page in your browser: the whole job without a terminal",
		Long: `Page opens a page in your browser on which the whole job is done: measuring,
drafting, laying by the program or by hand, quoting, printing. It works on the
job files of one folder, the same that the commands read; without a name it is
the folder that you are in.

The page is made by this program on this machine alone. Nobody else can open it,
and nothing leaves the machine. It ends a while after its last tab is closed.`,
		Example: `  ellwand page
  ellwand page sewing
  ellwand page sewing --no-browser --port 8040`,
		Args: cobra.MaximumNArgs(1),
		RunE: func(cmd *cobra.Command, args []string) error {
			folder := "."
			if len(args) == 1 {
				folder = args[0]
			}
			return e.page(cmd.Context(), folder, o)
		},
	}
	flags := cmd.Flags()
	flags.Var(limit.NumberOf(&o.port, limit.Port), "port", "port of this machine to open it on; 0 is any that is free")
	flags.BoolVar(&o.noBrowser, "no-browser", false, "print the address, and open no browser")
	flags.BoolVar(&o.stay, "stay", false, "go on after the last tab is closed")
	flags.Var((*passes)(&o.Passes), "passes", "passes of each search, in place of the effort")
	o.Seed = 1
	flags.Var((*limit.Seed)(&o.Seed), "seed", "seed of the searches; another seed may find another layout")
	return cmd
}

// page serves the page of a folder until it is closed.
func (e *env) page(ctx context.Context, folder string, o pageOptions) error {
	return page.Serve(ctx, page.Options{
		Folder: folder, Port: o.port, Search: o.Search, Stay: o.stay,
		Opened: func(address string) {
			if o.noBrowser {
				fmt.Fprintln(e.out, address)
				return
			}
			e.note("The page is open in your browser. If you do not see it, open this address:\n%s", address)
			if err := openBrowser(address); err != nil {
				e.note("note: no browser could be opened; open the address yourself")
			}
		},
	})
}

// homeFolder is where the page opens when the program was started by a double click: the
// folder that its user has documents in, or else her own.
func homeFolder() string {
	home, err := os.UserHomeDir()
	if err != nil {
		return "."
	}
	for _, name := range []string{"Documents", "Dokumente"} {
		if info, err := os.Stat(filepath.Join(home, name)); err == nil && info.IsDir() {
			return filepath.Join(home, name)
		}
	}
	return home
}
