# shellcheck shell=bash
# Completion of waterwright for bash: commands, their options, and the files that each takes.

_waterwright() {
    local cur prev words cword
    _init_completion || return

    local commands="new record check predict advise pump report export merge verify"
    local command="${words[1]:-}"
    if ((cword == 1)); then
        if [[ $cur == -* ]]; then
            mapfile -t COMPREPLY < <(compgen -W "--help --version" -- "$cur")
        else
            _filedir wwj
            mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -W "$commands" -- "$cur")
        fi
        return
    fi

    case "$prev" in
        --from)
            _filedir '@(xlsx|csv)'
            return
            ;;
        --csv)
            _filedir -d
            return
            ;;
        --out)
            if [[ $command == merge ]]; then _filedir wwj; else _filedir pdf; fi
            return
            ;;
        --json)
            if [[ $command == export ]]; then
                _filedir json
                return
            fi
            ;;
        --xlsx)
            _filedir xlsx
            return
            ;;
        --walk-sheet)
            _filedir '@(pdf|csv)'
            return
            ;;
        --sign)
            _filedir p12
            return
            ;;
        --role)
            mapfile -t COMPREPLY < <(compgen -W "technician supervisor" -- "$cur")
            return
            ;;
        --language)
            mapfile -t COMPREPLY < <(compgen -W "en es de fr" -- "$cur")
            return
            ;;
        --pass-file)
            _filedir
            return
            ;;
        --trust)
            _filedir pem
            return
            ;;
        --workbook)
            _filedir wwj
            return
            ;;
        --round | --set | --close | --speed | --impeller)
            # A number or a tag: only the job knows them.
            return
            ;;
    esac

    if [[ $cur == -* ]]; then
        local options
        case "$command" in
            new | record) options="--from --json" ;;
            check) options="--round --json" ;;
            predict) options="--set --close --speed --impeller --json" ;;
            advise | pump) options="--json" ;;
            report) options="--out --round --language --sign --role --pass-file" ;;
            export) options="--csv --xlsx --json --walk-sheet --language" ;;
            merge) options="--out --json" ;;
            verify) options="--trust --workbook --json" ;;
            *) return ;;
        esac
        mapfile -t COMPREPLY < <(compgen -W "$options --help" -- "$cur")
        return
    fi

    if [[ $command == verify ]]; then
        _filedir '@(wwj|pdf)'
    else
        _filedir wwj
    fi
}

complete -F _waterwright waterwright
